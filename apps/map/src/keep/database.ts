import { promisifyRequest } from 'idb-keyval';

const NAME = 'rootreach';
const VERSION = 1;

/** What a site is called and when it was last saved; its text lies in `texts`. */
export const HEADS = 'heads';
/** Two texts of each site: the newest and the one before it. */
export const TEXTS = 'texts';
/** What was put down in haste while the page was going away. */
export const PENDING = 'pending';

export type StoreName = typeof HEADS | typeof TEXTS | typeof PENDING;

export interface Database {
  /** Does all or nothing. Resolves once it is on the disk. */
  write<T>(stores: readonly StoreName[], act: (store: Store) => Promise<T>): Promise<T>;
  read<T>(stores: readonly StoreName[], act: (store: Store) => Promise<T>): Promise<T>;
  /** Puts one value and lets go at once, without waiting for an answer: for a page that is going away. */
  putInHaste(store: StoreName, value: unknown): void;
}

export type Store = (name: StoreName) => IDBObjectStore;

function open(factory: IDBFactory): Promise<IDBDatabase> {
  return new Promise((done, fail) => {
    const request = factory.open(NAME, VERSION);
    request.onupgradeneeded = () => {
      for (const store of [HEADS, TEXTS, PENDING]) {
        if (!request.result.objectStoreNames.contains(store)) {
          request.result.createObjectStore(store, { keyPath: 'id' });
        }
      }
    };
    request.onerror = () => fail(request.error);
    request.onblocked = () => fail(new DOMException('held by an older page', 'InvalidStateError'));
    request.onsuccess = () => done(request.result);
  });
}

/** Waits for the end of a transaction; what went wrong in it is what it fails with. */
async function finish<T>(transaction: IDBTransaction, work: Promise<T>): Promise<T> {
  const ended = promisifyRequest(transaction);
  try {
    const result = await work;
    await ended;
    return result;
  } catch (error) {
    ended.catch(() => undefined);
    try {
      transaction.abort();
    } catch {
      // it has ended already
    }
    throw error;
  }
}

/**
 * The store of this device. Opened when first wanted, and again where that failed or the browser closed it.
 * @throws what IndexedDB throws: SecurityError, InvalidStateError, QuotaExceededError and the like.
 */
export function database(factory: () => IDBFactory): Database {
  let opening: Promise<IDBDatabase> | null = null;
  let current: IDBDatabase | null = null;

  function forget(): void {
    opening = null;
    current = null;
  }

  function ready(): Promise<IDBDatabase> {
    opening ??= (async () => open(factory()))().then((db) => {
      current = db;
      db.onversionchange = () => {
        db.close();
        forget();
      };
      db.onclose = forget;
      return db;
    });
    opening.catch(forget);
    return opening;
  }

  async function run<T>(
    mode: 'readonly' | 'readwrite',
    stores: readonly StoreName[],
    act: (store: Store) => Promise<T>,
  ): Promise<T> {
    const db = await ready();
    const transaction = db.transaction([...stores], mode, { durability: 'strict' });
    return finish(
      transaction,
      act((name) => transaction.objectStore(name)),
    );
  }

  return {
    write: (stores, act) => run('readwrite', stores, act),
    read: (stores, act) => run('readonly', stores, act),
    putInHaste(store, value) {
      if (!current) return;
      const transaction = current.transaction([store], 'readwrite', { durability: 'strict' });
      transaction.objectStore(store).put(value);
      transaction.commit();
    },
  };
}
