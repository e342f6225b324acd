import type { Command, OptionSpecs } from './command.js';
import { wrap } from './print/wrap.js';

const NOTE = 'Screening estimates for planning an inspection: not a survey and not engineering.';
const FILES =
  "Files are GeoJSON; several are read together (trees in one, lines in another); '-' reads standard input.";
const EXITS = 'Ends with 0: fine; 1: done, but the input has errors or warnings; 2: could not do it.';

/** Names on the left, what they mean on the right of them, on as many lines as it takes. */
function named(rows: readonly (readonly [string, string])[], width: number): string[] {
  const left = Math.max(...rows.map(([name]) => name.length));
  return rows.map(([name, text]) => `  ${name.padEnd(left)}  ${wrap(text, width, left + 4)}`);
}

const optionRows = (options: OptionSpecs): [string, string][] =>
  Object.entries(options).map(([name, { value, text }]) => [
    value === null ? `--${name}` : `--${name} ${value}`,
    text,
  ]);

/** Help of one command, in lines of `width`; the examples stay whole, to be copied. */
export function commandHelp({ summary, usage, options, examples, files }: Command, width: number): string {
  const lines = [
    usage,
    `  ${wrap(summary, width, 2)}`,
    '',
    'Options',
    ...named(optionRows(options), width),
    '',
    examples.length > 1 ? 'Examples' : 'Example',
    ...examples.map((example) => `  ${example}`),
    '',
    ...[files ?? FILES, EXITS, NOTE].map((text) => wrap(text, width)),
  ];
  return `${lines.join('\n')}\n`;
}

/** Help of the whole, in lines of `width`. */
export function wholeHelp(commands: Readonly<Record<string, Command>>, width: number): string {
  const rows = Object.entries(commands).map(([name, { summary }]): [string, string] => [name, summary]);
  const lines = [
    wrap('rootreach: where tree roots threaten a buried drain line, why, and what to do about it.', width),
    '',
    'rootreach COMMAND FILE... [options]',
    '',
    'Commands',
    ...named(rows, width),
    '',
    'Example',
    '  rootreach rank yard.geojson',
    '',
    wrap("'rootreach COMMAND --help' tells a command's options.", width),
    ...[EXITS, NOTE].map((text) => wrap(text, width)),
  ];
  return `${lines.join('\n')}\n`;
}
