import { closeSync, openSync, readSync } from 'node:fs';
import { needsTakingIn } from '@rootreach/intake';
import { cannotRead } from '../read-inputs.js';

const HEAD_BYTES = 200_000;

/** Beginning of a collection, closed after its last whole feature, so that it can be looked at like a small file. */
function shortened(bytes: Uint8Array): Uint8Array {
  const text = new TextDecoder().decode(bytes);
  const cut = text.lastIndexOf('{"type":"Feature"');
  const from = cut > 0 ? cut : text.lastIndexOf('{ "type": "Feature"');
  return from > 0 ? new TextEncoder().encode(`${text.slice(0, from).replace(/,\s*$/, '')}]}`) : bytes;
}

/** @throws CannotDo for a file that cannot be read. */
function headOf(path: string): Uint8Array {
  try {
    const fd = openSync(path, 'r');
    try {
      const bytes = new Uint8Array(HEAD_BYTES);
      return bytes.subarray(0, readSync(fd, bytes, 0, HEAD_BYTES, 0));
    } finally {
      closeSync(fd);
    }
  } catch (error) {
    throw cannotRead(path, error);
  }
}

/** Whether a file looks from its beginning like a site file that the core reads itself. */
export function isSiteHead(path: string): boolean {
  const head = headOf(path);
  const { length } = head;

  return !needsTakingIn({ name: path, bytes: length < HEAD_BYTES ? head : shortened(head) });
}
