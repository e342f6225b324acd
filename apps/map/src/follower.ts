import { listPatch } from './list-patch.js';
import { NOTHING_SENT, type OpenedPatch, patchedOpened } from './opened-patch.js';
import type { Question } from './question.js';
import type { Task } from './serve.js';
import type { SiteDocument, SketchFeature } from './sketch/document.js';
import type { Opened } from './tasks.js';

/** Hears each answer; never one about an earlier state than the last. */
export type Tell = (opened: Opened) => void;

interface Wish {
  readonly site: SiteDocument | null;
  readonly name: string;
  readonly question: Question;
  readonly tell: Tell;
}

/** Nothing has changed for so long: then the sampled ranges are worth working out, milliseconds. */
const QUIET_MS = 150;

const membersOf = ({ info, members }: SiteDocument): Readonly<Record<string, unknown>> => {
  // the collection's own box may be out of date
  const { bbox: _, ...others } = members;
  return { rootreach: info, ...others };
};

/** What the worker was last sent of a sketch, and what it last answered. */
interface Mirror {
  readonly key: string;
  readonly name: string;
  features: readonly SketchFeature[];
  site: SiteDocument | null;
  answer: Opened;
}

/**
 * Keeps the worker's copy of the sketch in step and asks for its ranking: one request on its way at a time, of
 * those that come in meanwhile only the last.
 */
export function follower(ask: (task: Task) => Promise<unknown>) {
  let mirror: Mirror | null = null;
  let next: Wish | null = null;
  let underWay = false;
  let quiet: ReturnType<typeof setTimeout> | undefined;
  let turn = 0;

  async function takeStep(site: SiteDocument, name: string, question: Question): Promise<Opened> {
    const anew = mirror?.key !== site.key || mirror.name !== name;
    const to: Mirror =
      anew || !mirror ? { key: site.key, name, features: [], site: null, answer: NOTHING_SENT } : mirror;
    const same = to.site?.info === site.info && to.site.members === site.members;
    const patch = {
      name,
      features: listPatch<SketchFeature>(to.features, site.features),
      members: same ? null : membersOf(site),
      anew,
    };
    mirror = to;
    to.features = site.features;
    to.site = site;
    const changes = (await ask({ do: 'take', patch, question, settled: anew })) as OpenedPatch;
    to.answer = patchedOpened(to.answer, changes);
    return to.answer;
  }

  /** One request at a time. Where one fails, the worker's copy may be anything: the next begins anew. */
  async function alone(work: () => Promise<void>): Promise<void> {
    underWay = true;
    try {
      await work();
    } catch (error) {
      mirror = null;
      throw error;
    } finally {
      underWay = false;
      void step();
    }
  }

  async function settle(to: Mirror, mine: number, tell: Tell): Promise<void> {
    const changes = (await ask({ do: 'settle' })) as OpenedPatch | null;
    if (changes === null) return;
    to.answer = patchedOpened(to.answer, changes);
    if (mine === turn) tell(to.answer);
  }

  async function answer({ site, name, question, tell }: Wish, mine: number): Promise<void> {
    const opened = site
      ? await takeStep(site, name, question)
      : ((await ask({ do: 'ask', question })) as Opened);
    if (mine !== turn) return;
    tell(opened);
    const to = mirror;
    if (!site || !to || next !== null) return;
    clearTimeout(quiet);
    quiet = setTimeout(() => {
      if (!underWay) void alone(() => settle(to, mine, tell));
    }, QUIET_MS);
  }

  async function step(): Promise<void> {
    if (underWay || next === null) return;
    const wish = next;
    next = null;
    const mine = turn;
    await alone(() => answer(wish, mine));
  }

  return {
    update(site: SiteDocument | null, name: string, question: Question, tell: Tell): void {
      clearTimeout(quiet);
      next = { site, name, question, tell };
      void step();
    },
    /** Another site is being opened: what is on its way is not told. */
    stop(): void {
      turn += 1;
      clearTimeout(quiet);
      next = null;
      mirror = null;
    },
  };
}
