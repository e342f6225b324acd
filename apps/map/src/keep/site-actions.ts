import { isDemo } from '../demos.js';
import type { Opener } from '../open.js';
import { setInfo } from '../sketch/changes.js';
import type { SiteDocument } from '../sketch/document.js';
import * as sketch from '../sketch/sketch.js';
import * as state from '../state.js';
import { words } from '../words/words.js';
import { nameOf } from './describe.js';
import { fileText } from './file-text.js';
import * as keep from './keep-state.js';
import type { Keeper } from './keeper.js';
import type { KeptSite } from './kept-site.js';
import { newId } from './new-id.js';
import { recover } from './recover.js';
import { saveFile } from './save-file.js';
import type { Shelf } from './shelf.js';
import { withName } from './site-text.js';

/** What can be done with the sites on this device. */
export function siteActions(
  shelf: Shelf,
  keeper: () => Keeper,
  opener: () => Opener,
  /** Told after a change of the list, so that other tabs can read it anew. */
  changed: () => void,
) {
  async function refresh(): Promise<void> {
    keep.keptSites.value = await shelf.list().catch(() => null);
  }

  /** At the start of the page: takes up what was put down in haste, clears out what was deleted long ago. */
  async function begin(): Promise<void> {
    await recover(shelf).catch(() => undefined);
    await shelf.clearOut().catch(() => undefined);
    await refresh();
  }

  async function told(): Promise<void> {
    changed();
    await refresh();
  }

  /** False where there is no such site, or it cannot be read. */
  async function open(id: string): Promise<boolean> {
    await keeper().flush();
    const found = await shelf.read(id).catch(() => null);
    if (!found) return false;
    await opener().openText(found.site.name, found.text, { from: 'kept', site: found.site });
    keep.openedOlder.value = found.isOlder ? found.site.name : null;
    return true;
  }

  async function rename(site: KeptSite, name: string): Promise<void> {
    if (name === site.name) return;
    if (site.id === keep.keptId.value) {
      sketch.edit(words.value.keep.step.rename, setInfo({ name }));
      await keeper().flush();
      return;
    }
    const found = await shelf.read(site.id);
    if (found)
      await shelf.save(site.id, { ...found.site, name }, withName(found.text, name), found.site.revision);
    await told();
  }

  async function copy(site: KeptSite): Promise<void> {
    await keeper().flush();
    const found = await shelf.read(site.id);
    const name = words.value.keep.copyName(site.name);
    if (found) await shelf.save(newId(), { ...found.site, name }, withName(found.text, name), null);
    await told();
  }

  /** Deletes; where it was the open one, the next one opens, or an example. */
  async function remove(site: KeptSite): Promise<void> {
    const wasOpen = site.id === keep.keptId.value;
    await keeper().flush();
    await shelf.setDeleted(site.id, true);
    await told();
    if (!wasOpen) return;
    const next = keep.keptSites.value?.find((one) => one.deleted === null);
    if (!next || !(await open(next.id))) await opener().openDemo('corner-lot');
  }

  async function restore(site: KeptSite): Promise<void> {
    await shelf.setDeleted(site.id, false);
    await told();
  }

  /** The kept site that is the same as a document, to the letter; a file opened twice is one site. */
  async function twinOf(document: SiteDocument): Promise<KeptSite | null> {
    const text = fileText(document);
    const sites = await shelf.list().catch(() => []);
    for (const site of sites) {
      if (site.deleted !== null || site.characters !== text.length) continue;
      const found = await shelf.read(site.id).catch(() => null);
      if (found?.text === text) return found.site;
    }
    return null;
  }

  async function openPicked(value: string): Promise<void> {
    if (!isDemo(value)) await open(value);
    else {
      await keeper().flush();
      await opener().openDemo(value);
    }
  }

  /** The texts of all sites on this device; the open one as it now is, kept or not. */
  async function texts(): Promise<{ readonly name: string; readonly text: string }[]> {
    await keeper().flush();
    const heads = (await shelf.list().catch(() => [])).filter(({ deleted }) => deleted === null);
    const read = await Promise.all(heads.map(({ id }) => shelf.read(id).catch(() => null)));
    const kept = read.flatMap((one) => (one ? [{ name: one.site.name, text: one.text }] : []));
    const open = sketch.site.value;
    const isKept = keep.keptId.value !== null;
    return isKept || !open ? kept : [...kept, { name: nameOf(open), text: fileText(open) }];
  }

  function saveOpenAsFile(): void {
    const site = sketch.site.value;
    if (site) saveFile(site);
  }

  async function attempt(act: () => Promise<unknown>): Promise<void> {
    try {
      await act();
    } catch {
      state.problem.value = words.value.keep.panel.cannot;
    }
  }

  return {
    refresh,
    begin,
    open,
    openPicked,
    twinOf,
    saveOpenAsFile,
    texts,
    rename: (site: KeptSite, name: string) => attempt(() => rename(site, name)),
    copy: (site: KeptSite) => attempt(() => copy(site)),
    remove: (site: KeptSite) => attempt(() => remove(site)),
    restore: (site: KeptSite) => attempt(() => restore(site)),
  };
}

export type SiteActions = ReturnType<typeof siteActions>;
