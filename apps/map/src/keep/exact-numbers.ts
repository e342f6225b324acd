import { endOfString } from './end-of-string.js';

/** A whole number of sixteen digits or more, or an exponent of three: only then can a double lose something. */
const PERHAPS_TOO_LONG = /\d{16}|[eE][+-]?\d{3}/;
const NUMBER = /-?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const isNumberStart = (code: number): boolean => (code >= 0x30 && code <= 0x39) || code === 0x2d;

function isLost(source: string): boolean {
  const value = Number(source);
  if (!Number.isFinite(value)) return true;
  if (/[.eE]/.test(source)) return value === 0 && /[1-9]/.test(source.split(/[eE]/)[0] ?? '');
  // written back with the digits it came with, nothing is lost
  if (Number.isSafeInteger(value) || String(value) === source) return false;
  return BigInt(source) !== BigInt(value);
}

/**
 * Numbers that a double cannot hold, such as ids of eighteen digits, become texts of the same digits, so that
 * opening and saving a file loses none of them.
 */
export function exactNumbers(json: string): string {
  if (!PERHAPS_TOO_LONG.test(json)) return json;
  const parts: string[] = [];
  let from = 0;
  for (let i = 0; i < json.length; i++) {
    const code = json.charCodeAt(i);
    if (code === 0x22) {
      i = endOfString(json, i);
      if (i < 0) break;
    } else if (isNumberStart(code)) {
      NUMBER.lastIndex = i;
      const source = NUMBER.exec(json);
      if (source === null) continue;
      if (isLost(source[0])) {
        parts.push(json.slice(from, i), `"${source[0]}"`);
        from = i + source[0].length;
      }
      i += source[0].length - 1;
    }
  }
  return parts.join('') + json.slice(from);
}
