import { closeSync, openSync, readSync, statSync } from 'node:fs';
import { crc32 } from 'node:zlib';
import { type Issue, modelFingerprint, type SiteReading, type Town, type TownBlock } from '@rootreach/core';
import type { IntakeReport, TakeInOptions } from '@rootreach/intake';
import { writeWhole } from '../write-output.js';

/** First bytes of a cache file; the number is raised when its contents change their meaning. */
const MARK = 'rootreach town cache 3\n';
/** Columns start at such places, so that they can be looked at where they lie. */
const STEP = 8;

const TYPES = { Float64Array, Uint32Array, Int32Array, Uint8Array } as const;
type Column = InstanceType<(typeof TYPES)[keyof typeof TYPES]>;

/** Where a column lies in the file, in place of the column. */
interface Stored {
  readonly $column: keyof typeof TYPES | 'bytes' | 'text';
  readonly at: number;
  readonly bytes: number;
}

/** What a cache was made from: it is of no use when any of it has changed. */
export interface CacheKey {
  /** Fingerprint of the model: trees in it are grown by its numbers. */
  readonly model: string;
  readonly asOf: string;
  readonly horizonYears: number | null;
  /** How tables were read. */
  readonly intake: TakeInOptions;
  readonly files: readonly { readonly path: string; readonly size: number; readonly changedMs: number }[];
}

/** What stands before the columns: a fault of the disk in it or in them must not become a score. */
interface Head {
  readonly key: CacheKey;
  readonly body: unknown;
  /** CRC-32 over the columns in their order. */
  readonly check: number;
}

export interface CachedTown {
  readonly town: Town;
  readonly counts: SiteReading['counts'];
  readonly issues: readonly Issue[];
  readonly reports: readonly IntakeReport[];
  /** Scores of all lines, and what they were made with. */
  readonly scores: { readonly madeWith: string; readonly block: TownBlock };
}

/** Long texts are kept as bytes, so that the head stays small. */
const LONG_TEXT = 10_000;

/** Takes the columns and long texts out of a value; what stands in it twice is stored once. */
function takeApart(value: unknown, columns: Uint8Array[]): unknown {
  let at = 0;
  const known = new Map<unknown, Stored>();
  const store = ($column: Stored['$column'], bytes: Uint8Array): Stored => {
    const stored = { $column, at, bytes: bytes.byteLength };
    columns.push(bytes);
    at += Math.ceil(bytes.byteLength / STEP) * STEP;
    return stored;
  };
  const column = (one: unknown): Stored | null => {
    if (typeof one === 'string')
      return one.length > LONG_TEXT ? store('text', Buffer.from(one, 'utf8')) : null;
    if (one instanceof ArrayBuffer || one instanceof SharedArrayBuffer)
      return store('bytes', new Uint8Array(one));
    if (!ArrayBuffer.isView(one)) return null;
    const { buffer, byteOffset, byteLength } = one;
    return store(one.constructor.name as keyof typeof TYPES, new Uint8Array(buffer, byteOffset, byteLength));
  };
  const walk = (one: unknown): unknown => {
    const stored = known.get(one) ?? column(one);
    if (stored !== null) {
      known.set(one, stored);
      return stored;
    }
    if (Array.isArray(one)) return one.map(walk);
    if (typeof one === 'object' && one !== null) {
      return Object.fromEntries(Object.entries(one).map(([name, part]) => [name, walk(part)]));
    }
    return one;
  };
  return walk(value);
}

function readAll(fd: number, into: Uint8Array, from: number): boolean {
  for (let at = 0; at < into.byteLength; ) {
    const read = readSync(fd, into, at, Math.min(1 << 28, into.byteLength - at), from + at);
    if (read === 0) return false;
    at += read;
  }
  return true;
}

/** What a cache of these files would have to be made from. */
export function cacheKey(
  files: readonly string[],
  settings: Pick<CacheKey, 'asOf' | 'horizonYears' | 'intake'>,
): CacheKey {
  return {
    model: modelFingerprint(),
    ...settings,
    files: files.map((path) => {
      const { size, mtimeMs } = statSync(path);
      return { path, size, changedMs: mtimeMs };
    }),
  };
}

/** Writes the cache whole or not at all. @throws CannotDo where it cannot be written. */
export async function writeCache(path: string, key: CacheKey, cached: CachedTown): Promise<void> {
  const columns: Uint8Array[] = [];
  const body = takeApart(cached, columns);
  const check = columns.reduce((sum, column) => crc32(column, sum), 0);
  const head = Buffer.from(JSON.stringify({ key, body, check }), 'utf8');
  const sizes = Buffer.alloc(16);
  sizes.writeDoubleLE(head.byteLength, 0);
  sizes.writeUInt32LE(crc32(head), 8);
  const padded = columns.flatMap((column) => [
    column,
    new Uint8Array((STEP - (column.byteLength % STEP)) % STEP),
  ]);
  await writeWhole(path, [MARK, sizes, head, ...padded]);
}

function putTogether(value: unknown, columnAt: (stored: Stored) => unknown): unknown {
  if (Array.isArray(value)) return value.map((one) => putTogether(one, columnAt));
  if (typeof value !== 'object' || value === null) return value;
  if ('$column' in value) return columnAt(value as Stored);
  return Object.fromEntries(Object.entries(value).map(([name, part]) => [name, putTogether(part, columnAt)]));
}

/**
 * Reads a cache made from the same files with the same settings; null where there is none, it is of something else,
 * or it is damaged.
 * @param Room Buffers that threads share, or of one alone.
 */
export function readCache(
  path: string,
  key: CacheKey,
  Room: ArrayBufferConstructor | SharedArrayBufferConstructor,
): CachedTown | null {
  let fd: number;
  try {
    fd = openSync(path, 'r');
  } catch {
    return null;
  }
  try {
    const start = Buffer.alloc(MARK.length + 16);
    if (!readAll(fd, start, 0) || start.toString('latin1', 0, MARK.length) !== MARK) return null;
    const headBytes = start.readDoubleLE(MARK.length);
    if (!(headBytes > 0 && headBytes < 2 ** 30)) return null;
    const head = Buffer.alloc(headBytes);
    if (!readAll(fd, head, start.byteLength)) return null;
    if (crc32(head) !== start.readUInt32LE(MARK.length + 8)) return null;
    const { key: madeFrom, body, check } = JSON.parse(head.toString('utf8')) as Head;
    if (JSON.stringify(madeFrom) !== JSON.stringify(key)) return null;
    const first = start.byteLength + headBytes;
    let whole = true;
    const known = new Map<number, unknown>();
    let sum = 0;
    const read = ({ $column, at, bytes }: Stored): unknown => {
      const room = new Room(bytes);
      const filled = new Uint8Array(room);
      whole = readAll(fd, filled, first + at) && whole;
      sum = crc32(filled, sum);
      if ($column === 'bytes') return room;
      if ($column === 'text') return Buffer.from(room).toString('utf8');
      return new TYPES[$column](room as ArrayBuffer) as Column;
    };
    const columnAt = (stored: Stored): unknown => {
      // an empty one lies where another does
      if (stored.bytes === 0) return read(stored);
      const column = known.get(stored.at) ?? read(stored);
      known.set(stored.at, column);
      return column;
    };
    const cached = putTogether(body, columnAt) as CachedTown;
    return whole && sum === check ? cached : null;
  } catch {
    return null;
  } finally {
    closeSync(fd);
  }
}
