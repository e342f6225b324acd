import { parseArgs } from 'node:util';
import { CannotDo } from './cannot-do.js';
import type { OptionSpecs } from './command.js';
import { nearest } from './nearest.js';

/** What a number given with an option may be. */
interface NumberRule {
  readonly least: number;
  readonly most?: number;
  readonly whole?: boolean;
}

function ruleWords({ least, most, whole }: NumberRule): string {
  const kind = whole ? 'a whole number' : 'a number';
  return most === undefined ? `${kind} of at least ${least}` : `${kind} from ${least} to ${most}`;
}

/** Options and files of one call, checked as they are asked for. */
export class Args {
  constructor(
    readonly files: readonly string[],
    private readonly values: Readonly<Record<string, string | boolean | readonly string[]>>,
  ) {}

  flag(name: string): boolean {
    return this.values[name] === true;
  }

  text(name: string): string | undefined {
    const value = this.values[name];
    if (typeof value !== 'string') return undefined;
    if (value.trim() === '') throw new CannotDo(`--${name} needs a value`);
    return value;
  }

  /** Every value of an option that may be given more than once. */
  texts(name: string): readonly string[] {
    const values = this.values[name];
    if (!Array.isArray(values)) return [];
    if (values.some((value) => value.trim() === '')) throw new CannotDo(`--${name} needs a value`);
    return values;
  }

  number(name: string, rule: NumberRule): number | undefined {
    const text = this.text(name);
    if (text === undefined) return undefined;
    const value = Number(text);
    const fits =
      Number.isFinite(value) &&
      value >= rule.least &&
      value <= (rule.most ?? Infinity) &&
      (!rule.whole || Number.isInteger(value));
    if (!fits) throw new CannotDo(`--${name} takes ${ruleWords(rule)}, got '${text}'`);
    return value;
  }

  choice<T extends string>(name: string, choices: readonly T[]): T | undefined {
    const text = this.text(name);
    if (text === undefined) return undefined;
    const found = choices.find((choice) => choice === text);
    if (found === undefined) throw new CannotDo(`--${name} takes ${choices.join(' or ')}, got '${text}'`);
    return found;
  }
}

const QUOTED_OPTION = /'(-[^'\s]*)/;

/** One line for what the parser found wrong; its own message runs over several. */
function wordFault(error: Error & { code?: string }, options: OptionSpecs): string {
  const given = QUOTED_OPTION.exec(error.message)?.[1] ?? '';
  const name = given.replace(/^-+/, '');
  if (error.code === 'ERR_PARSE_ARGS_UNKNOWN_OPTION') {
    const close = nearest(name, Object.keys(options))[0];
    return `unknown option '${given}'${close === undefined ? '' : `; did you mean --${close}?`}`;
  }
  const spec = options[name];
  if (spec === undefined) return error.message.split('\n')[0] as string;
  return spec.value === null
    ? `--${name} takes no value`
    : `--${name} needs a value: --${name}=${spec.value}`;
}

/** Splits the words after a command into files and options. */
export function readArgs(words: readonly string[], options: OptionSpecs): Args {
  const types = Object.entries(options).map(([name, { value, many }]) => [
    name,
    {
      type: value === null ? 'boolean' : 'string',
      ...(name === 'help' ? { short: 'h' } : {}),
      ...(many ? { multiple: true } : {}),
    },
  ]);
  try {
    const { values, positionals } = parseArgs({
      args: [...words],
      options: Object.fromEntries(types),
      allowPositionals: true,
      strict: true,
    });
    return new Args(positionals, values as Record<string, string | boolean | string[]>);
  } catch (error) {
    throw new CannotDo(wordFault(error as Error, options));
  }
}
