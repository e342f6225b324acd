import { batch, effect, untracked } from '@preact/signals';
import { setInfo } from '../sketch/changes.js';
import type { SiteDocument } from '../sketch/document.js';
import * as sketch from '../sketch/sketch.js';
import * as state from '../state.js';
import { words } from '../words/words.js';
import { describe, nameOf } from './describe.js';
import { fileText } from './file-text.js';
import * as keep from './keep-state.js';
import { newId } from './new-id.js';
import type { Shelf } from './shelf.js';
import type { Hold, SiteLocks } from './site-lock.js';
import { withName } from './site-text.js';
import { whyUnsaved } from './why-unsaved.js';

/** Long enough to take the end of a drag as one change, short enough that nobody closes the page within it. */
const DELAY_MS = 300;

/** The open document and what the device has of it. */
interface Held {
  readonly key: string;
  readonly copyOf: string | null;
  id: string;
  revision: number | null;
  latest: SiteDocument;
  saved: SiteDocument | null;
  hold: Hold | null;
  claiming: Promise<void> | null;
  standsBack: keep.StandsBack | null;
  writing: Promise<void> | null;
}

const NO_HOLD: Hold = { release: () => undefined };

export interface KeeperParts {
  readonly shelf: Shelf;
  readonly locks: SiteLocks;
  /** Asks other tabs to save a site and let it go. */
  readonly askToLetGo: (site: string) => void;
  readonly openKept: (site: string) => Promise<void>;
  /** Called after each save. */
  readonly saved: () => void;
  readonly now: () => string;
  readonly delayMs?: number;
}

const isDirty = (held: Held) => held.latest !== held.saved;

function heldFrom(site: SiteDocument): Held {
  const from = keep.origin.peek();
  const kept = from.from === 'kept' ? from.site : null;
  return {
    key: site.key,
    copyOf: kept?.copyOf ?? (from.from === 'demo' ? from.demo : null),
    id: kept?.id ?? newId(),
    revision: kept?.revision ?? null,
    latest: site,
    saved: from.from === 'file' || from.from === 'begun' ? null : site,
    hold: null,
    claiming: null,
    standsBack: null,
    writing: null,
  };
}

/** Keeps the open site on this device: after every change, never over what another tab has saved. */
export function keeper(parts: KeeperParts) {
  const { shelf, locks, now } = parts;
  const writer = newId();
  let held: Held | null = null;
  /** What failed last; it may be a site that is no longer the open one. */
  let failed: Held | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let hastily: string | null = null;

  function stateOf(one: Held): keep.SaveState {
    if (one.standsBack) return 'stands-back';
    if (failed === one) return 'unsaved';
    if (isDirty(one)) return 'saving';
    if (one.revision !== null) return 'saved';
    return keep.origin.peek().from === 'demo' ? 'example' : 'as-in-file';
  }

  function show(): void {
    batch(() => {
      keep.saveState.value = held ? stateOf(held) : 'view-only';
      keep.standsBack.value = held?.standsBack ?? null;
      keep.keptId.value = held && held.revision !== null ? held.id : null;
      if (!failed) keep.unsaved.value = null;
    });
  }

  function lost(one: Held): void {
    one.hold = null;
    one.standsBack = 'taken-over';
    show();
  }

  async function askForHold(one: Held): Promise<void> {
    // without locks the revision in the store still keeps tabs apart
    const hold = await locks.hold(one.id, () => lost(one)).catch(() => NO_HOLD);
    one.hold = hold;
    if (!hold) one.standsBack = 'open-elsewhere';
    if (one !== held && !isDirty(one)) release(one);
    show();
  }

  /** Asks once at a time: a second request of this tab would wait for the first one and find the site taken. */
  async function claim(one: Held): Promise<void> {
    one.claiming ??= askForHold(one);
    await one.claiming;
    one.claiming = null;
  }

  function release(one: Held): void {
    one.hold?.release();
    one.hold = null;
  }

  async function write(one: Held): Promise<void> {
    const site = one.latest;
    try {
      if (!one.hold) await claim(one);
      if (one.standsBack) return;
      const result = await shelf.save(
        one.id,
        describe(site, one.copyOf, writer),
        fileText(site),
        one.revision,
      );
      if (result.done) {
        one.revision = result.revision;
        one.saved = site;
        if (failed === one) failed = null;
        if (hastily !== null) void shelf.dropPending(hastily).catch(() => undefined);
        hastily = null;
        parts.saved();
      } else one.standsBack = 'changed-elsewhere';
    } catch (error) {
      failed = one;
      keep.unsaved.value = { why: whyUnsaved(error), site };
    }
  }

  /** Writes until what is on the device is what is on the plan, or until it cannot. */
  async function save(one: Held): Promise<void> {
    while (one.writing) await one.writing;
    while (isDirty(one) && !one.standsBack) {
      const before = one.saved;
      one.writing = write(one);
      await one.writing;
      one.writing = null;
      if (one.saved === before) break;
    }
    if (one !== held) release(one);
    show();
  }

  async function flush(): Promise<void> {
    clearTimeout(timer);
    if (failed && failed !== held) await save(failed);
    if (held) await save(held);
  }

  function schedule(delayMs: number): void {
    clearTimeout(timer);
    timer = setTimeout(() => void flush(), delayMs);
  }

  function leave(): void {
    clearTimeout(timer);
    const before = held;
    held = null;
    if (!before) return;
    if (isDirty(before) && before.standsBack) putDown(before);
    void save(before);
  }

  function follow(site: SiteDocument | null): void {
    if (!site) leave();
    else if (site.key !== held?.key) {
      leave();
      held = heldFrom(site);
      if (held.revision !== null) void claim(held);
      if (isDirty(held)) schedule(0);
    } else if (site !== held.latest) {
      held.latest = site;
      state.siteKey.value = null;
      schedule(parts.delayMs ?? DELAY_MS);
    }
    show();
  }

  /** For a page that is going away: what is not saved is put down to be taken up at the next start. */
  function putDown(one: Held | null = held): void {
    if (!one || !isDirty(one)) return;
    hastily ??= newId();
    shelf.putInHaste({
      id: hastily,
      site: one.id,
      from: one.standsBack ? null : one.revision,
      described: describe(one.latest, one.copyOf, writer),
      moment: now(),
      text: fileText(one.latest),
    });
  }

  /** Another tab asks for the site. */
  async function letGo(site: string): Promise<void> {
    const one = held;
    if (!one || one.id !== site || !one.hold) return;
    await save(one);
    release(one);
    one.standsBack = 'taken-over';
    show();
  }

  /** Makes this tab the one that saves. What the other tab has saved meanwhile stays, as a copy if need be. */
  async function takeOver(): Promise<void> {
    const one = held;
    if (!one) return;
    parts.askToLetGo(one.id);
    one.hold = await locks.takeOver(one.id, () => lost(one));
    const stored = await shelf.read(one.id);
    const isBehind = stored !== null && stored.site.revision !== one.revision;
    if (isBehind && !isDirty(one)) {
      release(one);
      await parts.openKept(one.id);
      return;
    }
    if (isBehind) {
      const name = words.value.keep.otherTabName(stored.site.name);
      await shelf.save(newId(), { ...stored.site, name, writer }, withName(stored.text, name), null);
      one.revision = stored.site.deleted
        ? ((await shelf.setDeleted(one.id, false))?.revision ?? null)
        : stored.site.revision;
    } else if (stored === null) one.revision = null;
    one.standsBack = null;
    await save(one);
  }

  /** What is on the plan becomes a site of its own; the other tab keeps the one it has. */
  async function keepAsCopy(): Promise<void> {
    const one = held;
    if (!one) return;
    release(one);
    Object.assign(one, { id: newId(), revision: null, saved: null, standsBack: null });
    const name = words.value.keep.copyName(nameOf(one.latest));
    sketch.edit(words.value.keep.step.copy, setInfo({ name }));
    await flush();
  }

  return {
    /** Starts to follow the sketch. Returns the stop. */
    start: (): (() => void) =>
      effect(() => {
        const site = sketch.site.value;
        untracked(() => follow(site));
      }),
    flush,
    putDown,
    letGo,
    takeOver,
    keepAsCopy,
    hasUnsaved: () => (held !== null && isDirty(held)) || failed !== null,
  };
}

export type Keeper = ReturnType<typeof keeper>;
