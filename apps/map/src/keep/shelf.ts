import { promisifyRequest } from 'idb-keyval';
import { type Database, HEADS, PENDING, type Store, TEXTS } from './database.js';
import type { Described, KeptSite } from './kept-site.js';

/** A site deleted longer ago than this is gone for good (judgement). */
const KEPT_AFTER_DELETION_MS = 30 * 24 * 3600 * 1000;

/** Each site has two places for its text; the newer one is never written over. */
interface Text {
  readonly id: string;
  readonly revision: number;
  readonly text: string;
}

export interface Pending {
  readonly id: string;
  readonly site: string;
  /** Revision that the text was made from; null for a site that was not kept yet, or was another tab's. */
  readonly from: number | null;
  readonly described: Described;
  /** When it was put down, ISO 8601. */
  readonly moment: string;
  readonly text: string;
}

export type SaveResult =
  | { readonly done: true; readonly revision: number }
  /** Somebody else has saved since: nothing was written. */
  | { readonly done: false; readonly now: KeptSite | null };

export interface ReadResult {
  readonly site: KeptSite;
  readonly text: string;
  /** The newest text could not be read; this is the one before it. */
  readonly isOlder: boolean;
}

const get = async <T>(store: IDBObjectStore, id: string) =>
  (await promisifyRequest(store.get(id))) as T | undefined;
const put = (store: IDBObjectStore, value: KeptSite | Text) => promisifyRequest(store.put(value));
const all = async <T>(store: IDBObjectStore) => (await promisifyRequest(store.getAll())) as T[];
const places = (site: string) => [`${site}/a`, `${site}/b`] as const;

async function textsOf(store: Store, site: string): Promise<Text[]> {
  const [a, b] = places(site);
  const found = [await get<Text>(store(TEXTS), a), await get<Text>(store(TEXTS), b)];
  return found.filter((text) => text !== undefined).sort((x, y) => y.revision - x.revision);
}

async function remove(store: Store, site: string): Promise<void> {
  await promisifyRequest(store(HEADS).delete(site));
  for (const place of places(site)) await promisifyRequest(store(TEXTS).delete(place));
}

/**
 * The sites kept on this device.
 * @param isReadable Whether a text is a site at all.
 * @param now The moment, ISO 8601.
 */
export function shelf(db: Database, isReadable: (text: string) => boolean, now: () => string) {
  async function writeText(store: Store, head: KeptSite, text: string): Promise<void> {
    const [newest] = await textsOf(store, head.id);
    const [a, b] = places(head.id);
    await put(store(TEXTS), { id: newest?.id === a ? b : a, revision: head.revision, text });
    await put(store(HEADS), head);
  }

  /** Writes only if the site still is at the revision that the text was made from; null for a new site. */
  function save(id: string, described: Described, text: string, from: number | null): Promise<SaveResult> {
    return db.write([HEADS, TEXTS], async (store) => {
      const before = await get<KeptSite>(store(HEADS), id);
      if ((before?.revision ?? null) !== from || before?.deleted) return { done: false, now: before ?? null };
      const revision = (from ?? 0) + 1;
      const moment = now();
      const created = before?.created ?? moment;
      const characters = text.length;
      const head = { ...described, id, created, changed: moment, deleted: null, revision, characters };
      await writeText(store, head, text);
      return { done: true, revision };
    });
  }

  /** All sites, the last changed first; deleted ones too. */
  async function list(): Promise<KeptSite[]> {
    const heads = await db.read([HEADS], (store) => all<KeptSite>(store(HEADS)));
    return heads.sort((a, b) => (a.changed < b.changed ? 1 : -1));
  }

  /** The newest text that makes sense, else the one before; null where there is neither. */
  async function read(id: string): Promise<ReadResult | null> {
    const { site, texts } = await db.read([HEADS, TEXTS], async (store) => ({
      site: await get<KeptSite>(store(HEADS), id),
      texts: await textsOf(store, id),
    }));
    const index = texts.findIndex(({ text }) => isReadable(text));
    const found = texts[index];
    return site && found ? { site, text: found.text, isOlder: index > 0 } : null;
  }

  function changeHead(id: string, change: (head: KeptSite) => KeptSite): Promise<KeptSite | null> {
    return db.write([HEADS], async (store) => {
      const head = await get<KeptSite>(store(HEADS), id);
      if (!head) return null;
      const after = { ...change(head), revision: head.revision + 1 };
      await put(store(HEADS), after);
      return after;
    });
  }

  const setDeleted = (id: string, isDeleted: boolean) =>
    changeHead(id, (head) => ({ ...head, deleted: isDeleted ? now() : null }));

  /** Takes away for good what was deleted long ago. */
  function clearOut(): Promise<void> {
    return db.write([HEADS, TEXTS], async (store) => {
      for (const { id, deleted } of await all<KeptSite>(store(HEADS))) {
        const age = deleted === null ? 0 : Date.parse(now()) - Date.parse(deleted);
        if (age > KEPT_AFTER_DELETION_MS) await remove(store, id);
      }
    });
  }

  const putInHaste = (pending: Pending) => db.putInHaste(PENDING, pending);

  const pending = () => db.read([PENDING], (store) => all<Pending>(store(PENDING)));
  const dropPending = (id: string) =>
    db.write([PENDING], async (store) => {
      await promisifyRequest(store(PENDING).delete(id));
    });

  return { save, list, read, setDeleted, clearOut, putInHaste, pending, dropPending };
}

export type Shelf = ReturnType<typeof shelf>;
