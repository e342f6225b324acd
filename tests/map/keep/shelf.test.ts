import { IDBFactory } from 'fake-indexeddb';
import fc from 'fast-check';
import { beforeEach, describe, expect, it } from 'vitest';
import { database, TEXTS } from '../../../apps/map/src/keep/database.js';
import { recover } from '../../../apps/map/src/keep/recover.js';
import { type Pending, shelf } from '../../../apps/map/src/keep/shelf.js';
import { isSiteText } from '../../../apps/map/src/keep/site-text.js';

const described = { name: 'Yard', copyOf: null, lines: 1, trees: 2, writer: 'tab a' };
const text = (name: string) =>
  JSON.stringify({ type: 'FeatureCollection', rootreach: { name }, features: [] });

let factory: IDBFactory;
let minutes: number;
const now = () => new Date(Date.UTC(2026, 10, 25, 8, minutes)).toISOString();
const db = () => database(() => factory);
const open = () => shelf(db(), isSiteText, now);

beforeEach(() => {
  factory = new IDBFactory();
  minutes = 0;
});

describe('the sites on a device', () => {
  it('come back letter by letter, with what the list says of them', async () => {
    await open().save('a', described, text('Yard'), null);
    minutes = 5;
    await open().save('a', { ...described, trees: 3 }, text('Yard, later'), 1);
    const found = await open().read('a');
    expect(found?.text).toBe(text('Yard, later'));
    expect(found?.isOlder).toBe(false);
    expect(found?.site).toMatchObject({ name: 'Yard', lines: 1, trees: 3, revision: 2, deleted: null });
    expect(found?.site.created).toBe('2026-11-25T08:00:00.000Z');
    expect(found?.site.changed).toBe('2026-11-25T08:05:00.000Z');
  });

  it('are listed last changed first', async () => {
    for (const id of ['a', 'b', 'c']) {
      minutes += 1;
      await open().save(id, described, text(id), null);
    }
    minutes += 1;
    await open().save('b', described, text('b again'), 1);
    expect((await open().list()).map((site) => site.id)).toEqual(['b', 'c', 'a']);
  });

  it('are never written over by who has not seen the last save', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.record({ tab: fc.nat(2), looks: fc.boolean() }), { maxLength: 25 }),
        async (steps) => {
          factory = new IDBFactory();
          const seen: (number | null)[] = [null, null, null];
          let revision: number | null = null;
          let kept = '';
          for (const [i, { tab, looks }] of steps.entries()) {
            if (looks) seen[tab] = (await open().read('a'))?.site.revision ?? null;
            const mine = text(`step ${i}`);
            const result = await open().save('a', described, mine, seen[tab] ?? null);
            expect(result.done).toBe((seen[tab] ?? null) === revision);
            if (!result.done) continue;
            kept = mine;
            revision = result.revision;
            seen[tab] = result.revision;
          }
          expect((await open().read('a'))?.text ?? '').toBe(kept);
        },
      ),
      { numRuns: 60, seed: 5 },
    );
  });

  it('have the save before to fall back on, however often they were saved', async () => {
    for (let n = 0; n < 5; n++) await open().save('a', described, text(`save ${n}`), n === 0 ? null : n);
    for (const [damaged, left] of [
      ['save 4', 'save 3'],
      ['save 3', null],
    ] as const) {
      await db().write([TEXTS], async (store) => {
        const all = store(TEXTS).getAll();
        await new Promise((done) => {
          all.onsuccess = done;
        });
        const one = (all.result as { text: string }[]).find((row) => row.text.includes(damaged));
        store(TEXTS).put({ ...one, text: one?.text.slice(0, 20) });
      });
      const found = await open().read('a');
      expect(found?.text ?? null).toBe(left === null ? null : text(left));
      if (found) expect(found.isOlder).toBe(true);
    }
  });

  it('stay as they were when the last of a save fails', async () => {
    await open().save('a', described, text('first'), null);
    const broken = database(() => factory);
    const failing = shelf(
      {
        ...broken,
        write: (stores, act) =>
          broken.write(stores, async (store) => {
            await act(store);
            throw new DOMException('no room', 'QuotaExceededError');
          }),
      },
      isSiteText,
      now,
    );
    await expect(failing.save('a', described, text('second'), 1)).rejects.toThrow('no room');
    const found = await open().read('a');
    expect(found?.text).toBe(text('first'));
    expect(found?.site.revision).toBe(1);
  });

  it('can be brought back for thirty days after they were deleted, not longer', async () => {
    await open().save('a', described, text('a'), null);
    await open().setDeleted('a', true);
    expect(await open().save('a', described, text('late'), 1)).toMatchObject({ done: false });
    minutes = 29 * 24 * 60;
    await open().clearOut();
    await open().setDeleted('a', false);
    expect((await open().read('a'))?.text).toBe(text('a'));
    await open().setDeleted('a', true);
    minutes += 31 * 24 * 60;
    await open().clearOut();
    expect(await open().list()).toEqual([]);
    expect(await open().read('a')).toBeNull();
  });
});

describe('what a page put down as it went away', () => {
  const pending = (more: Partial<Pending>): Pending => ({
    id: 'p',
    site: 'a',
    from: 1,
    described: { ...described, name: 'Last words' },
    moment: now(),
    text: text('Last words'),
    ...more,
  });
  const namesKept = async () => (await open().list()).map((site) => site.name).sort();

  async function comeBack(put: Pending): Promise<void> {
    const store = db();
    await open().save('a', described, text('Yard'), null);
    const before = shelf(store, isSiteText, now);
    await before.list();
    before.putInHaste(put);
    await recover(open());
    expect(await open().pending()).toEqual([]);
  }

  it('is the next save of its site', async () => {
    await comeBack(pending({}));
    expect(await namesKept()).toEqual(['Last words']);
    expect((await open().read('a'))?.text).toBe(text('Last words'));
  });

  it('is dropped where it had been saved after all', async () => {
    await comeBack(pending({ text: text('Yard') }));
    expect(await namesKept()).toEqual(['Yard']);
    expect((await open().read('a'))?.site.revision).toBe(1);
  });

  it('is a site of its own where somebody else has saved since, or has the site', async () => {
    for (const from of [0, null]) {
      factory = new IDBFactory();
      await comeBack(pending({ from, described: { ...described, name: 'Last words', writer: 'tab b' } }));
      expect(await namesKept()).toEqual(['Last words (found again)', 'Yard']);
      expect((await open().read('a'))?.text).toBe(text('Yard'));
    }
  });

  it('follows on from the same tab’s own save that was under way', async () => {
    await comeBack(pending({ from: 0 }));
    expect(await namesKept()).toEqual(['Last words']);
  });

  it('is a new site where it was not kept yet', async () => {
    await comeBack(pending({ site: 'new', from: null }));
    expect(await namesKept()).toEqual(['Last words', 'Yard']);
  });

  it('never stops the page, whatever it holds', async () => {
    await comeBack(pending({ text: '{"type":' }));
    expect(await namesKept()).toEqual(['Yard']);
  });
});
