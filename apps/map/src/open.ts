import { batch } from '@preact/signals';
import { type DemoKey, demos } from './demos.js';
import type { Engine } from './engine.js';
import { exactNumbers } from './keep/exact-numbers.js';
import { isEditable, isLookedInto, whyNotLoaded, whyNotRead } from './keep/file-limits.js';
import { isTown } from './keep/is-town.js';
import * as keep from './keep/keep-state.js';
import type { KeptSite } from './keep/kept-site.js';
import { newId } from './keep/new-id.js';
import { type SiteDocument, toGeoJson } from './sketch/document.js';
import { readDocument } from './sketch/read-document.js';
import { openDocument } from './sketch/sketch.js';
import * as state from './state.js';
import { isForeign, type Tables, tables, takeFiles } from './take-in/taken-files.js';
import type { Input, InputFile, Opened } from './tasks.js';
import { today } from './today.js';
import { words } from './words/words.js';

/** What a local server answers. */
interface Served {
  readonly files: readonly InputFile[];
}

/** Where a site comes from, and what of it the address asked for. */
interface Wish {
  readonly origin: keep.Origin;
  readonly demo: DemoKey | null;
  readonly stretch: string | null;
  readonly tables?: Tables;
}

const reason = (error: unknown): string => (error instanceof Error ? error.message : String(error));

function whyUnusable({ result: { totals }, issues }: Opened): string | null {
  if (totals.drains > 0 || totals.trees > 0) return null;
  const worst = issues.find((issue) => issue.severity === 'error') ?? issues[0];
  return worst ? words.value.model.issue(worst, state.units.value) : words.value.problem.nothingInIt;
}

/**
 * Files as the model reads them, GeoJSON each: the one place where files of other kinds are made into it.
 * What is too large to edit goes on unread.
 */
async function toInputs(
  files: readonly File[],
): Promise<{ readonly inputs: readonly Input[]; readonly tables?: Tables }> {
  const foreign = files.filter(isForeign);
  if (foreign.length > 0) {
    const { inputs: beside } = await toInputs(files.filter((file) => !isForeign(file)));
    const { inputs, taken } = await takeFiles(foreign);
    return { inputs: [...beside, ...inputs], tables: { taken, beside } };
  }
  const unread = files.map((file) => ({ name: file.name, file }));
  if (!files.every(isLookedInto) || (await isTown(files))) return { inputs: unread };
  const read = await Promise.all(files.map(async (file) => ({ name: file.name, text: await file.text() })));
  return { inputs: isEditable(read) ? read : unread };
}

function show(
  opened: Opened,
  document: SiteDocument | null,
  inputs: readonly Input[],
  { origin, demo, stretch, tables: madeOf }: Wish,
): void {
  const known = opened.result.segments.some((row) => row.id === stretch);
  batch(() => {
    state.problem.value = null;
    state.opened.value = opened;
    state.siteKey.value = demo;
    state.fileNames.value = inputs.map((input) => input.name);
    state.chosenTree.value = null;
    state.hintedStretch.value = null;
    state.chosenStretch.value = known ? stretch : null;
    keep.origin.value = origin;
    tables.value = madeOf ?? null;
    openDocument(document);
  });
}

/**
 * What the page does with files: read, rank, and show them, or say why not and leave the open site alone.
 * @param twinOf Looks among the kept sites for one that is the same to the letter.
 */
export function opener(
  engine: Engine,
  twinOf: (site: SiteDocument) => Promise<KeptSite | null> = async () => null,
) {
  let turns = 0;

  /** The model's answer and the document to edit; things without an id of their own are read again with one. */
  async function read(inputs: readonly Input[]) {
    const opened = await engine.open(inputs, today());
    if (opened === null) return null;
    if (!isEditable(inputs) || opened.large) return { opened, document: null };
    const { document, isAsGiven } = readDocument(newId(), inputs);
    if (isAsGiven) return { opened, document };
    const name = inputs[0]?.name ?? '';
    const again = await engine.open([{ name, text: toGeoJson(document) }], today());
    return again && { opened: { ...again, issues: opened.issues }, document };
  }

  async function openWish(given: readonly Input[], wish: Wish): Promise<void> {
    const names = given.map((input) => input.name).join(', ');
    const whyNot = whyNotRead(given);
    if (whyNot !== null) {
      state.problem.value = whyNot;
      state.busy.value = false;
      return;
    }
    state.busy.value = true;
    try {
      const inputs = isEditable(given)
        ? given.map(({ name, text }) => ({ name, text: exactNumbers(text) }))
        : given;
      const found = await read(inputs);
      if (found === null) return;
      const mayBeEmpty = wish.origin.from === 'kept' || wish.origin.from === 'begun';
      const why = mayBeEmpty ? null : whyUnusable(found.opened);
      const isFile = wish.origin.from === 'file' && found.document !== null;
      const twin = isFile && why === null ? await twinOf(found.document) : null;
      if (why !== null) state.problem.value = words.value.problem.couldNotOpen(names, why);
      else {
        const origin = twin ? ({ from: 'kept', site: twin } as const) : wish.origin;
        show(found.opened, found.document, inputs, { ...wish, origin });
      }
    } catch (error) {
      state.problem.value = words.value.problem.couldNotOpen(names, reason(error));
    }
    state.busy.value = false;
  }

  async function openInputs(
    inputs: readonly Input[],
    demo: DemoKey | null = null,
    stretch: string | null = null,
  ): Promise<void> {
    turns += 1;
    await openWish(inputs, { origin: demo ? { from: 'demo', demo } : { from: 'file' }, demo, stretch });
  }

  /** Inputs that were made of tables, with what came of these. */
  async function openTables(inputs: readonly Input[], made: Tables): Promise<void> {
    turns += 1;
    await openWish(inputs, { origin: { from: 'file' }, demo: null, stretch: null, tables: made });
  }

  /** Fetches from the page's own folder, then opens; a slow answer to an earlier wish is dropped. */
  async function openFetched(
    address: string,
    inputsOf: (answer: Response) => Promise<readonly InputFile[]>,
    wish: Wish,
  ): Promise<void> {
    const turn = ++turns;
    try {
      const answer = await fetch(address);
      if (!answer.ok) throw new Error(words.value.problem.notThere);
      const inputs = await inputsOf(answer);
      if (turn === turns) await openWish(inputs, wish);
    } catch (error) {
      if (turn !== turns) return;
      state.problem.value = words.value.problem.couldNotOpen(address, reason(error));
      state.busy.value = false;
    }
  }

  async function openDemo(demo: DemoKey, stretch: string | null = null): Promise<void> {
    const inputsOf = async (answer: Response) => [{ name: `${demo}.geojson`, text: await answer.text() }];
    await openFetched(demos[demo], inputsOf, { origin: { from: 'demo', demo }, demo, stretch });
  }

  async function openFiles(files: readonly File[]): Promise<void> {
    if (files.length === 0) return;
    const turn = ++turns;
    const names = files.map((file) => file.name).join(', ');
    const bytes = files.reduce((sum, file) => sum + file.size, 0);
    const whyNot = whyNotLoaded(names, bytes);
    if (whyNot !== null) {
      state.problem.value = whyNot;
      return;
    }
    try {
      const { inputs, tables: made } = await toInputs(files);
      if (turn !== turns) return;
      await (made ? openTables(inputs, made) : openInputs(inputs));
    } catch (error) {
      if (turn === turns) state.problem.value = words.value.problem.couldNotOpen(names, reason(error));
    }
  }

  /** Files handed over by a local server, named in the page's head; false when there are none. */
  async function openServed(address: string, stretch: string | null): Promise<boolean> {
    if (address === '') return false;
    const inputsOf = async (answer: Response) => ((await answer.json()) as Served).files;
    await openFetched(`./${address}`, inputsOf, { origin: { from: 'served' }, demo: null, stretch });
    return true;
  }

  /** A site of this device, or one begun on a blank lot. */
  async function openText(name: string, text: string, origin: keep.Origin): Promise<void> {
    turns += 1;
    await openWish([{ name, text }], { origin, demo: null, stretch: null });
  }

  return { openInputs, openTables, openDemo, openFiles, openServed, openText };
}

export type Opener = ReturnType<typeof opener>;
