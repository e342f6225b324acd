import type { z } from 'zod';
import type { IssueDetail, Place, Severity } from '../model/issue.js';
import type { IssueList } from '../read/issue-list.js';
import { yearOf } from '../units/calendar.js';
import type { Properties } from './columns.js';
import type { NamedQuantity } from './quantity-names.js';

/** Two units that disagree by more than this share are an issue. */
const DISAGREE = 0.01;
const NUMBER = /^\s*[-+]?\d+(\.\d+)?([eE][-+]?\d+)?\s*$/;
/** Names that hold text even where it looks like a number. */
const TEXT_KEYS = new Set([
  'id',
  'name',
  'species',
  'material',
  'condition',
  'note',
  'drain',
  'from',
  'installed',
  'dug',
  'cut',
  'planted',
  'felled',
  'date',
  'kind',
  'type',
]);

/** Blank texts are missing; numbers that travelled as text are numbers again. */
export function tidy(properties: Properties): Record<string, unknown> {
  const tidied: Record<string, unknown> = {};
  for (const key in properties) {
    const value = properties[key];
    if (value === null || value === undefined) continue;
    if (typeof value === 'string') {
      if (value.trim() === '') continue;
      tidied[key] = !TEXT_KEYS.has(key) && NUMBER.test(value) ? Number(value) : value;
    } else tidied[key] = value;
  }
  return tidied;
}

/** Reads one feature's checked properties and reports what does not fit. */
export class PropertyReader {
  constructor(
    private readonly values: Readonly<Record<string, unknown>>,
    readonly place: Place,
    private readonly issues: IssueList,
  ) {}

  report(severity: Severity, detail: IssueDetail, path: string): void {
    this.issues.add({ ...detail, severity, place: { ...this.place, path } });
  }

  text(name: string): string | null {
    const value = this.values[name];
    return value === undefined ? null : String(value);
  }

  flag(name: string): boolean | null {
    const value = this.values[name];
    return typeof value === 'boolean' ? value : null;
  }

  number(name: string): number | null {
    const value = this.values[name];
    return typeof value === 'number' ? value : null;
  }

  /** A date as a fractional year. */
  year(name: string): number | null {
    const value = this.values[name];
    if (value === undefined) return null;
    const year = yearOf(value as string | number);
    if (year !== undefined) return year;
    this.report(
      'warning',
      { code: 'bad-value', expected: 'an ISO date or a year', got: String(value) },
      `properties.${name}`,
    );
    return null;
  }

  /** A quantity in SI, whatever unit it was given in; two that disagree are an issue and the first counts. */
  quantity(named: NamedQuantity): number | null {
    return this.all(named, (value) => (typeof value === 'number' ? value : null));
  }

  /** Like `quantity`, for a list of values combined by `combine` after conversion. */
  list(named: NamedQuantity, combine: (values: number[]) => number): number | null {
    let found: number | null = null;
    for (const unit in named.units) {
      const value = this.values[`${named.base}_${unit}`];
      const convert = named.units[unit] as (v: number) => number;
      if (Array.isArray(value) && found === null) found = combine(value.map((v) => convert(Number(v))));
    }
    return found;
  }

  private all(named: NamedQuantity, pick: (value: unknown) => number | null): number | null {
    let found: number | null = null;
    let foundName = '';
    for (const unit in named.units) {
      const name = `${named.base}_${unit}`;
      const raw = this.values[name];
      if (raw === undefined) continue;
      const value = pick(raw);
      if (value === null) continue;
      const si = (named.units[unit] as (v: number) => number)(value);
      if (found === null) {
        found = si;
        foundName = name;
      } else if (Math.abs(si - found) > DISAGREE * Math.max(Math.abs(si), Math.abs(found))) {
        this.report(
          'warning',
          { code: 'units-disagree', first: foundName, second: name },
          `properties.${name}`,
        );
      }
    }
    return found;
  }
}

function wordsFor(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return `a ${issue.expected}`;
    case 'invalid_value':
      return `one of ${issue.values.join(', ')}`;
    case 'too_small':
      return issue.inclusive === false ? `more than ${issue.minimum}` : `at least ${issue.minimum}`;
    case 'too_big':
      return `at most ${issue.maximum}`;
    case 'invalid_union':
      return 'a text or a number of another form';
    default:
      return issue.message;
  }
}

function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>((v, key) => (v as Record<PropertyKey, unknown> | undefined)?.[key], value);
}

/** Properties that passed their schema, or null where one did not: then the issues are reported. */
export function checkProperties(
  schema: z.ZodType,
  values: Record<string, unknown>,
  place: Place,
  issues: IssueList,
): boolean {
  const result = schema.safeParse(values);
  if (result.success) return true;
  for (const issue of result.error.issues) {
    const path = `properties.${issue.path.join('.')}`;
    const got = valueAt(values, issue.path);
    const detail: IssueDetail =
      got === undefined
        ? { code: 'missing-value', expected: wordsFor(issue) }
        : {
            code: 'bad-value',
            expected: wordsFor(issue),
            got: String(JSON.stringify(got) ?? got).slice(0, 60),
          };
    issues.add({ ...detail, severity: 'error', place: { ...place, path } });
  }
  return false;
}
