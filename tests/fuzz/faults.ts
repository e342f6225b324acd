import { strangers } from '../report/strangers.js';
import { csvCells } from './csv-cells.js';

/** One text that the command wrote, and of what form it is. */
export interface Written {
  readonly form: 'json' | 'csv' | 'ics' | 'html' | 'svg' | 'text';
  readonly name: string;
  readonly text: string;
}

/** What the command did with a case. */
export interface Outcome {
  readonly code: number;
  readonly err: string;
  readonly written: readonly Written[];
  /** Numbers that are none, as they were given to be written as JSON. */
  readonly notFinite: readonly string[];
  /** Names that shared objects have now and had not before. */
  readonly polluted: readonly string[];
  /** Lines put on the console past the command. */
  readonly console: readonly string[];
  /** All that came in, to tell what the input says itself. */
  readonly given: string;
}

const STACK = /^\s+at .*:\d+/m;
const ENGINE =
  /Maximum call stack|Cannot read propert|is not a function|is not iterable|Invalid array length/;
const NO_VALUE = /\b(?:NaN|Infinity|undefined)\b|\[object /;
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must not be there
const COMMANDS = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]/;
const FORMULA = /^[=+\-@\t\r＝＋－＠]/;
/** A number, or a row of them where it is not split. */
const NUMBER = /^-?\d+(?:\.\d+)?(?:e[+-]?\d+)?(?:,(?:-?\d+(?:\.\d+)?(?:e[+-]?\d+)?)?)*$/i;

/** Cells that a spreadsheet would take for formulas, whichever character it splits at. */
function formulas(text: string): string[] {
  return [',', ';', '\t'].flatMap((delimiter) =>
    csvCells(text, delimiter)
      .flat()
      .filter((cell) => FORMULA.test(cell) && !NUMBER.test(cell))
      .map((cell) => `formula when split at ${JSON.stringify(delimiter)}: ${cell.slice(0, 80)}`),
  );
}

function unevenRows(text: string): string[] {
  const widths = new Set(csvCells(text, ',').map((row) => row.length));
  return widths.size > 1 ? [`rows of ${[...widths].join(', ')} cells`] : [];
}

/** RFC 5545, 3.1: lines of at most 75 octets, ended by CR LF; events that nobody put in show as one more of a kind. */
function calendarFaults(text: string): string[] {
  const lines = text.split('\r\n');
  const events = lines.filter((line) => line === 'BEGIN:VEVENT').length;
  const starts = lines.filter((line) => line.startsWith('DTSTART')).length;
  return [
    ...(lines.some((line) => Buffer.byteLength(line) > 75) ? ['a line of over 75 octets'] : []),
    ...(/[^\r]\n|\r[^\n]/.test(text) ? ['a bare line end'] : []),
    ...(events === starts ? [] : [`${events} events, ${starts} beginnings`]),
    ...lines
      .filter((line) => line !== '' && !/^(?: |[A-Z-]+[;:])/.test(line))
      .map((line) => `odd line ${line}`),
  ];
}

function markupFaults(text: string): string[] {
  try {
    return strangers(text).map((one) => `in the markup: ${one.slice(0, 120)}`);
  } catch (error) {
    return [`markup: ${(error as Error).message.slice(0, 200)}`];
  }
}

interface WithIssues {
  readonly issues?: readonly { readonly severity?: string; readonly message?: string }[];
}

function jsonFaults(text: string, code: number): string[] {
  let value: WithIssues;
  try {
    value = JSON.parse(text) as WithIssues;
  } catch (error) {
    return [`not JSON: ${(error as Error).message}`];
  }
  const issues = Array.isArray(value.issues) ? value.issues : [];
  const grave = issues.some(({ severity }) => severity !== undefined && severity !== 'notice');
  return [
    ...(grave && code === 0 ? ['errors in the input, and exit code 0'] : []),
    ...issues.filter(({ message }) => message === '').map(() => 'an issue without words'),
  ];
}

function textFaults({ text }: Written): string[] {
  const found = COMMANDS.exec(text);
  return found === null ? [] : [`a control character: ${JSON.stringify(found[0])}`];
}

const faultsOfForm: Readonly<Record<Written['form'], (one: Written, code: number) => string[]>> = {
  json: ({ text }, code) => jsonFaults(text, code),
  csv: ({ text }) => [...formulas(text), ...unevenRows(text)],
  ics: ({ text }) => calendarFaults(text),
  html: ({ text }) => markupFaults(text),
  svg: ({ text }) => markupFaults(text),
  text: textFaults,
};

/** What was wrong with how the command took a case; empty where it stood. */
export function faultsOf({ code, err, written, notFinite, polluted, console, given }: Outcome): string[] {
  // what came in as UTF-16 has a zero byte in every other place
  const said = NO_VALUE.test(given) || NO_VALUE.test(given.replaceAll('\u0000', ''));
  const texts = [{ name: 'stderr', text: err }, ...written];
  return [
    ...([0, 1, 2].includes(code) ? [] : [`exit code ${code}`]),
    ...(err.includes('something went wrong inside') ? [`went wrong inside: ${err.slice(-200)}`] : []),
    ...(STACK.test(err) ? ['a stack trace'] : []),
    ...(code === 2 && !/\S/.test(err + written.map(({ text }) => text).join(''))
      ? ['exit code 2 without a word']
      : []),
    // of markup and grids that is the truth; a table has rows, of which a bad one must not take the others with it
    ...(err.includes('the file is damaged') && !/@\/(?:x\.kml|x\.gpx|ground\.asc)/.test(given)
      ? ['a whole table given up as damaged']
      : []),
    ...(code !== 2 && written.length === 0 ? [`exit code ${code} and nothing written`] : []),
    ...notFinite.map((path) => `not finite: ${path}`),
    ...console.map((line) => `on the console: ${line}`),
    ...polluted.map((name) => `polluted: ${name}`),
    ...texts
      .filter(({ text }) => ENGINE.test(text))
      .map(({ name, text }) => `${name} speaks of the engine: ${ENGINE.exec(text)?.[0]}`),
    ...texts
      .filter(({ text }) => !said && NO_VALUE.test(text))
      .map(
        ({ name, text }) =>
          `${name} says ${text.slice(Math.max(0, text.search(NO_VALUE) - 60)).slice(0, 120)}`,
      ),
    ...textFaults({ form: 'text', name: 'stderr', text: err }).map((fault) => `stderr: ${fault}`),
    ...written.flatMap((one) => faultsOfForm[one.form](one, code).map((fault) => `${one.name}: ${fault}`)),
  ];
}
