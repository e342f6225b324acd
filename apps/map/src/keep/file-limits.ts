import type { Input, InputFile } from '../tasks.js';
import { words } from '../words/words.js';
import { endOfString } from './end-of-string.js';

/** More than this, in bytes or characters, would fill a phone's memory. */
const MOST = 60_000_000;
/** A longer file surely is a town's: the page does not even look into it. */
const MOST_LOOKED_INTO_BYTES = 30_000_000;
/** A larger site is shown but not edited here: each step would take a moment too long. */
export const MOST_EDITABLE = 4_000_000;
/** A site file nests about eight deep; a GeometryCollection of polygons twelve. */
const MOST_NESTED = 100;
const PICTURE = '"data:';

/** Nesting of brackets outside strings, counted without recursion. Stops once it is past the limit. */
function isTooDeep(text: string): boolean {
  let depth = 0;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code === 0x22) {
      i = endOfString(text, i);
      if (i < 0) return false;
    } else if (code === 0x5b || code === 0x7b) {
      depth += 1;
      if (depth > MOST_NESTED) return true;
    } else if (code === 0x5d || code === 0x7d) depth -= 1;
  }
  return false;
}

/** Characters of a text without the pictures in it. */
function withoutPictures(text: string): number {
  let length = text.length;
  for (let at = text.indexOf(PICTURE); at >= 0; ) {
    const end = endOfString(text, at);
    if (end < 0) break;
    length -= end - at;
    at = text.indexOf(PICTURE, end + 1);
  }
  return length;
}

const charactersOf = (inputs: readonly InputFile[]) =>
  inputs.reduce((sum, input) => sum + input.text.length, 0);

/** Small enough to be edited here. Pictures do not count: they are no work for the model. */
export function isEditable(inputs: readonly Input[]): inputs is readonly InputFile[] {
  if (!inputs.every((input): input is InputFile => 'text' in input)) return false;
  if (charactersOf(inputs) <= MOST_EDITABLE) return true;
  return inputs.reduce((sum, input) => sum + withoutPictures(input.text), 0) <= MOST_EDITABLE;
}

export const isLookedInto = (file: File): boolean => file.size <= MOST_LOOKED_INTO_BYTES;

/** Why files of this many bytes in all are not even read; null where they may be. */
export const whyNotLoaded = (names: string, bytes: number): string | null =>
  bytes > MOST ? words.value.problem.tooLarge(names) : null;

/** Why texts are not handed to the model: too much of them, or nested beyond reason. Null where they may be. */
export function whyNotRead(inputs: readonly Input[]): string | null {
  const texts = inputs.filter((input): input is InputFile => 'text' in input);
  if (charactersOf(texts) > MOST) {
    return words.value.problem.tooLarge(texts.map((input) => input.name).join(', '));
  }
  const deep = isEditable(inputs) ? inputs.find((input) => isTooDeep(input.text)) : undefined;
  return deep ? words.value.problem.couldNotOpen(deep.name, words.value.keep.tooDeep) : null;
}
