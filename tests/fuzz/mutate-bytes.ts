import type { Chance } from './chance.js';

const PIECES: readonly string[] = [
  '"',
  '{',
  '}',
  '[',
  ']',
  ',',
  ':',
  '\\',
  '\\u0000',
  '\n',
  '\u0000',
  '/*',
  'e9',
  '<',
];

const spliced = (bytes: Uint8Array, at: number, gone: number, put: Uint8Array): Uint8Array =>
  Uint8Array.from([...bytes.subarray(0, at), ...put, ...bytes.subarray(at + gone)]);

const wide = (bytes: Uint8Array): Uint8Array => {
  const text = new TextDecoder().decode(bytes);
  return Uint8Array.from([0xff, 0xfe, ...Buffer.from(text, 'utf16le')]);
};

type Change = (bytes: Uint8Array, chance: Chance) => Uint8Array;

const changes: readonly Change[] = [
  (bytes, chance) => {
    const at = chance.below(bytes.length);
    return spliced(bytes, at, 1, Uint8Array.of((bytes[at] ?? 0) ^ (1 << chance.below(8))));
  },
  (bytes, chance) => spliced(bytes, chance.below(bytes.length), 1, Uint8Array.of(chance.below(256))),
  (bytes, chance) => spliced(bytes, chance.below(bytes.length), chance.few(30), new Uint8Array()),
  (bytes, chance) =>
    spliced(bytes, chance.below(bytes.length), 0, new TextEncoder().encode(chance.pick(PIECES))),
  (bytes, chance) => {
    const from = chance.below(bytes.length);
    const part = bytes.subarray(from, from + chance.few(200));
    return spliced(bytes, chance.below(bytes.length), 0, part);
  },
  (bytes, chance) => bytes.subarray(0, chance.below(bytes.length)),
  (bytes, chance) => bytes.subarray(chance.below(bytes.length)),
  (bytes, chance) =>
    chance.happens(0.3) ? wide(bytes) : spliced(bytes, 0, 0, Uint8Array.of(0xef, 0xbb, 0xbf)),
];

/** The same file damaged as a disk, a wire or an editor would. */
export function mutatedBytes(bytes: Uint8Array, chance: Chance, most = 4): Uint8Array {
  let changed = bytes;
  for (let left = chance.few(most); left > 0; left--) changed = chance.pick(changes)(changed, chance);
  return changed;
}
