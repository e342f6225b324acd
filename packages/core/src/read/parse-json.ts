import type { Issue } from '../model/issue.js';

/** A named text: what a file or a dropped thing is to the core. */
export interface TextInput {
  readonly name: string;
  readonly text: string;
}

/** The parsed value, or the issue that stands for it. */
export type Parsed =
  | { readonly ok: true; readonly file: string; readonly value: unknown }
  | { readonly ok: false; readonly issue: Issue };

/** Engines word the same fault differently and quote the input; one wording for all. */
function reasonOf(error: unknown, text: string): string {
  if (text.trim() === '') return 'the file is empty';
  const message = error instanceof Error ? error.message : String(error);
  const position = /position (\d+)/.exec(message)?.[1];
  if (position !== undefined) {
    const line = text.slice(0, Number(position)).split('\n').length;
    return `the text stops making sense at line ${line} (character ${position})`;
  }
  return /end of JSON|Unterminated/.test(message) ? 'the text breaks off' : 'the text is not JSON';
}

/** Text to a JSON value; a byte-order mark is passed over. Never throws. */
export function parseJson({ name, text }: TextInput): Parsed {
  try {
    return { ok: true, file: name, value: JSON.parse(text.charCodeAt(0) === 0xfeff ? text.slice(1) : text) };
  } catch (error) {
    return {
      ok: false,
      issue: {
        code: 'not-json',
        severity: 'error',
        reason: reasonOf(error, text),
        place: { file: name, index: null, feature: null, path: '' },
      },
    };
  }
}
