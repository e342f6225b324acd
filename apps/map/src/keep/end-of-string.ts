const BACKSLASH = 0x5c;

/** Place of the quote that ends the JSON string begun at a place; -1 where the text breaks off in it. */
export function endOfString(text: string, from: number): number {
  for (let end = text.indexOf('"', from + 1); end >= 0; end = text.indexOf('"', end + 1)) {
    let slashes = 0;
    while (text.charCodeAt(end - 1 - slashes) === BACKSLASH) slashes += 1;
    if (slashes % 2 === 0) return end;
  }
  return -1;
}
