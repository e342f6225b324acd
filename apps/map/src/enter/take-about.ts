/** `about 30`, `~30`, `c. 1990`, `unos 30`: the words by which a value is said to be an estimate. */
const ABOUT =
  /^\s*(?:~|≈|about\b|abt\.?|approx(?:imately|\.)?|around\b|roughly\b|circa\b|ca?\.|unos\b|unas\b|aprox(?:\.|imadamente)?|cerca de\b)\s*/i;

export interface Said {
  readonly text: string;
  readonly about: boolean;
}

/** Takes the word for an estimate off the front of what was typed. */
export function takeAbout(typed: string): Said {
  const text = typed.replace(ABOUT, '');
  return { text: text.trim(), about: text.length < typed.length && ABOUT.test(typed) };
}
