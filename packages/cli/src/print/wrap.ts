/** Fills lines with words; a word longer than a line is cut. */
function wrapWords(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/).filter((w) => w !== '')) {
    let rest = word;
    if (line !== '' && line.length + 1 + rest.length <= width) {
      line += ` ${rest}`;
      continue;
    }
    if (line !== '') lines.push(line);
    while (rest.length > width) {
      lines.push(rest.slice(0, width));
      rest = rest.slice(width);
    }
    line = rest;
  }
  if (line !== '') lines.push(line);
  return lines;
}

/** A paragraph no wider than `width`, its later lines indented. */
export function wrap(text: string, width: number, indent = 0): string {
  const pad = ' '.repeat(indent);
  return wrapWords(text, Math.max(20, width - indent)).join(`\n${pad}`);
}

/** Phrases one after the other, `; ` between, broken between phrases where that is possible. */
export function wrapPhrases(phrases: readonly string[], width: number): string[] {
  const lines: string[] = [];
  let line = '';
  phrases.forEach((phrase, i) => {
    const text = i < phrases.length - 1 ? `${phrase};` : phrase;
    if (line !== '' && line.length + 1 + text.length <= width) {
      line += ` ${text}`;
      return;
    }
    if (line !== '') lines.push(line);
    const parts = wrapWords(text, width);
    lines.push(...parts.slice(0, -1));
    line = parts[parts.length - 1] ?? '';
  });
  if (line !== '') lines.push(line);
  return lines;
}
