import { MOST_EDITABLE } from './file-limits.js';

const PICTURE = '"data:';

/** Counts characters outside pictures as a text comes in piece by piece. */
class PlainText {
  private inPicture = false;
  /** End of the last piece, in which a picture may have begun. */
  private rest = '';
  length = 0;

  take(piece: string): void {
    const text = this.rest + piece;
    let at = 0;
    while (at < text.length) {
      const end = text.indexOf(this.inPicture ? '"' : PICTURE, at);
      if (end < 0) break;
      if (!this.inPicture) this.length += end - at;
      at = this.inPicture ? end + 1 : end + PICTURE.length;
      this.inPicture = !this.inPicture;
    }
    const left = text.length - at;
    const kept = this.inPicture ? 0 : Math.min(left, PICTURE.length - 1);
    if (!this.inPicture) this.length += left - kept;
    this.rest = kept > 0 ? text.slice(-kept) : '';
  }
}

/**
 * True where files hold more than can be edited here, pictures not counted. Read in pieces, no further than it
 * takes to tell: a town's text never passes through the page as a whole.
 */
export async function isTown(files: readonly Blob[]): Promise<boolean> {
  const plain = new PlainText();
  for (const file of files) {
    const decoder = new TextDecoder();
    const reader = file.stream().getReader();
    for (let piece = await reader.read(); !piece.done; piece = await reader.read()) {
      plain.take(decoder.decode(piece.value, { stream: true }));
      if (plain.length <= MOST_EDITABLE) continue;
      await reader.cancel();
      return true;
    }
  }
  return false;
}
