import { words } from '../words/words.js';
import { newId } from './new-id.js';
import type { Pending, Shelf } from './shelf.js';
import { isSiteText, withName } from './site-text.js';

/** Takes one up: into its site where nobody else has saved since, else as a site of its own. */
async function takeUp(shelf: Shelf, one: Pending): Promise<void> {
  if (!isSiteText(one.text)) return;
  const kept = (await shelf.list()).find((site) => site.id === one.site);
  const stored = kept ? await shelf.read(one.site) : null;
  if (stored?.text === one.text) return;
  const isNext =
    (kept?.revision ?? null) === one.from ||
    (kept?.writer === one.described.writer && kept.changed <= one.moment);
  if (isNext && (one.from !== null) === (kept !== undefined)) {
    const result = await shelf.save(one.site, one.described, one.text, kept?.revision ?? null);
    if (result.done) return;
  }
  const name = words.value.keep.foundName(one.described.name);
  await shelf.save(newId(), { ...one.described, name }, withName(one.text, name), null);
}

/** What pages put down in haste as they went away, taken up again. Nothing else is written over by it. */
export async function recover(shelf: Shelf): Promise<void> {
  for (const one of await shelf.pending()) {
    await takeUp(shelf, one);
    await shelf.dropPending(one.id);
  }
}
