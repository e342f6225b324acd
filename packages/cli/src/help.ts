import type { Command, OptionSpecs } from './command.js';

const NOTE = 'Screening estimates for planning an inspection: not a survey and not engineering.';
const FILES =
  "Files are GeoJSON; several are read together (trees in one, lines in another); '-' reads standard input.";
const EXITS = 'Ends with 0: fine; 1: done, but the input has errors or warnings; 2: could not do it.';

function optionLines(options: OptionSpecs): string[] {
  const names = Object.entries(options).map(([name, { value, text }]) => ({
    name: value === null ? `--${name}` : `--${name} ${value}`,
    text,
  }));
  const width = Math.max(...names.map(({ name }) => name.length));
  return names.map(({ name, text }) => `  ${name.padEnd(width)}  ${text}`);
}

/** Help of one command. */
export function commandHelp({ summary, usage, options, examples, files }: Command): string {
  const lines = [
    `${usage}`,
    `  ${summary}`,
    '',
    'Options',
    ...optionLines(options),
    '',
    examples.length > 1 ? 'Examples' : 'Example',
    ...examples.map((example) => `  ${example}`),
    '',
    files ?? FILES,
    EXITS,
    NOTE,
  ];
  return `${lines.join('\n')}\n`;
}

/** Help of the whole. */
export function wholeHelp(commands: Readonly<Record<string, Command>>): string {
  const names = Object.entries(commands);
  const width = Math.max(...names.map(([name]) => name.length));
  const lines = [
    'rootreach: where tree roots threaten a buried drain line, why, and what to do about it.',
    '',
    'rootreach COMMAND FILE... [options]',
    '',
    'Commands',
    ...names.map(([name, { summary }]) => `  ${name.padEnd(width)}  ${summary}`),
    '',
    'Example',
    '  rootreach rank yard.geojson',
    '',
    "'rootreach COMMAND --help' tells a command's options.",
    EXITS,
    NOTE,
  ];
  return `${lines.join('\n')}\n`;
}
