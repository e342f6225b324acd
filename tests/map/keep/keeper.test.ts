import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { database } from '../../../apps/map/src/keep/database.js';
import * as keep from '../../../apps/map/src/keep/keep-state.js';
import { keeper } from '../../../apps/map/src/keep/keeper.js';
import { shelf } from '../../../apps/map/src/keep/shelf.js';
import { isSiteText } from '../../../apps/map/src/keep/site-text.js';
import { setInfo } from '../../../apps/map/src/sketch/changes.js';
import type { SiteDocument } from '../../../apps/map/src/sketch/document.js';
import * as sketch from '../../../apps/map/src/sketch/sketch.js';
import { memoryLocks } from './memory-locks.js';

const now = () => '2026-11-25T08:00:00.000Z';
const site = (key: string, name: string): SiteDocument => ({
  key,
  features: [],
  info: { name },
  members: {},
});

let factory: IDBFactory;
let locks: ReturnType<typeof memoryLocks>;
let full: boolean;
let stop: () => void;

const open = () =>
  shelf(
    database(() => factory),
    isSiteText,
    now,
  );

function start() {
  const parts = open();
  const made = keeper({
    shelf: {
      ...parts,
      save: async (...given) => {
        if (full) throw new DOMException('no room', 'QuotaExceededError');
        return await parts.save(...given);
      },
    },
    locks,
    askToLetGo: () => undefined,
    openKept: async () => undefined,
    saved: () => undefined,
    now,
    delayMs: 0,
  });
  stop = made.start();
  return made;
}

const rename = (name: string) => sketch.edit('rename', setInfo({ name }));
const names = async () => (await open().list()).map((one) => one.name).sort();

function openDocument(document: SiteDocument, origin: keep.Origin): void {
  keep.origin.value = origin;
  sketch.openDocument(document);
}

beforeEach(() => {
  factory = new IDBFactory();
  locks = memoryLocks();
  full = false;
  sketch.openDocument(null);
});

afterEach(() => {
  stop();
  sketch.openDocument(null);
  keep.unsaved.value = null;
});

describe('the keeper of the open site', () => {
  it('keeps a file at once, and every change after that', async () => {
    const { flush } = start();
    openDocument(site('k1', 'Yard'), { from: 'file' });
    expect(keep.saveState.value).toBe('saving');
    await flush();
    expect(keep.saveState.value).toBe('saved');
    rename('Front yard');
    expect(keep.saveState.value).toBe('saving');
    await flush();
    expect(await names()).toEqual(['Front yard']);
    expect((await open().read(keep.keptId.value ?? ''))?.site.revision).toBe(2);
  });

  it('keeps nothing of an example until it is changed, then a copy', async () => {
    const { flush } = start();
    openDocument(site('k1', 'Lot'), { from: 'demo', demo: 'corner-lot' });
    await flush();
    expect(keep.saveState.value).toBe('example');
    expect(await names()).toEqual([]);
    rename('Own lot');
    await flush();
    expect((await open().list()).map((one) => [one.name, one.copyOf])).toEqual([['Own lot', 'corner-lot']]);
  });

  it('saves what was changed last before another site is opened', async () => {
    const { flush } = start();
    openDocument(site('k1', 'One'), { from: 'file' });
    await flush();
    rename('One, changed');
    openDocument(site('k2', 'Two'), { from: 'file' });
    await flush();
    await expect.poll(names).toEqual(['One, changed', 'Two']);
  });

  it('says that it cannot save, holds on to the site, and saves when it can again', async () => {
    const { flush, hasUnsaved } = start();
    full = true;
    openDocument(site('k1', 'Yard'), { from: 'file' });
    await flush();
    expect(keep.saveState.value).toBe('unsaved');
    expect(keep.unsaved.value?.why).toBe('full');
    rename('Yard, more');
    await flush();
    expect(keep.unsaved.value?.site.info['name']).toBe('Yard, more');
    openDocument(site('k2', 'Two'), { from: 'file' });
    await flush();
    expect(hasUnsaved()).toBe(true);
    full = false;
    await flush();
    await flush();
    expect(keep.unsaved.value).toBeNull();
    expect(hasUnsaved()).toBe(false);
    expect(await names()).toContain('Two');
  });

  it('stands back where another tab has the site, and saves nothing over it', async () => {
    await open().save('s', { name: 'Yard', copyOf: null, lines: 0, trees: 0, writer: 'other' }, '{}', null);
    await locks.hold('s', () => undefined);
    const [kept] = await open().list();
    const { flush } = start();
    openDocument(site('k1', 'Yard'), kept ? { from: 'kept', site: kept } : { from: 'begun' });
    await expect.poll(() => keep.standsBack.value).toBe('open-elsewhere');
    rename('Mine');
    await flush();
    expect(await names()).toEqual(['Yard']);
    expect(keep.saveState.value).toBe('stands-back');
  });

  it('sees a save of another tab even where there are no locks', async () => {
    const { flush, keepAsCopy } = start();
    openDocument(site('k1', 'Yard'), { from: 'file' });
    await flush();
    const id = keep.keptId.value ?? '';
    await open().save(id, { name: 'Theirs', copyOf: null, lines: 0, trees: 0, writer: 'other' }, '{}', 1);
    rename('Mine');
    await flush();
    expect(keep.standsBack.value).toBe('changed-elsewhere');
    expect(await names()).toEqual(['Theirs']);
    await keepAsCopy();
    expect(await names()).toEqual(['Mine (copy)', 'Theirs']);
    expect(keep.standsBack.value).toBeNull();
  });

  it('gives a site over to the tab that asks, with the last change in it', async () => {
    const { flush, letGo } = start();
    openDocument(site('k1', 'Yard'), { from: 'file' });
    await flush();
    rename('Last change');
    await letGo(keep.keptId.value ?? '');
    expect(await names()).toEqual(['Last change']);
    expect(keep.standsBack.value).toBe('taken-over');
    rename('Too late');
    await flush();
    expect(await names()).toEqual(['Last change']);
  });
});
