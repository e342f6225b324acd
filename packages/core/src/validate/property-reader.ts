import type { z } from 'zod';
import type { IssueDetail, Place, Severity } from '../model/issue.js';
import type { Origin } from '../model/site.js';
import type { IssueList } from '../read/issue-list.js';
import { textOf } from '../read/text-of.js';
import { yearOf } from '../units/calendar.js';
import type { Properties } from './columns.js';
import type { NamedQuantity } from './quantity-names.js';
import { ruleWords } from './rule-words.js';

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
  'street',
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

/** True for a value that can stay as it is. */
function isTidy(key: string, value: unknown): boolean {
  if (value === null || value === undefined) return false;
  if (typeof value !== 'string') return true;
  return value.trim() !== '' && (TEXT_KEYS.has(key) || !NUMBER.test(value));
}

/** Blank texts are missing; numbers that travelled as text are numbers again. */
export function tidy(properties: Properties): Properties {
  let clean = true;
  for (const key in properties) clean = clean && isTidy(key, properties[key]);
  if (clean) return properties;
  const tidied: Record<string, unknown> = {};
  for (const key in properties) {
    const value = properties[key];
    if (isTidy(key, value)) tidied[key] = value;
    else if (typeof value === 'string' && value.trim() !== '') tidied[key] = Number(value);
  }
  return tidied;
}

/** Reads one feature's checked properties and reports what does not fit. */
export class PropertyReader {
  constructor(
    private readonly values: Readonly<Record<string, unknown>>,
    private readonly origin: Origin,
    private readonly id: string,
    private readonly issues: IssueList,
  ) {}

  report(severity: Severity, detail: IssueDetail, path: string): void {
    this.issues.add({ ...detail, severity, place: { ...this.origin, feature: this.id, path } });
  }

  text(name: string): string | null {
    const value = this.values[name];
    return value === undefined ? null : textOf(value);
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
      { code: 'bad-value', expected: 'an ISO date or a year', got: textOf(value) },
      `properties.${name}`,
    );
    return null;
  }

  /** A quantity in SI, whatever unit it was given in; two that disagree are an issue and the first counts. */
  quantity(quantity: NamedQuantity): number | null {
    let found: number | null = null;
    let first = '';
    for (const { name, toSi } of quantity.names) {
      const raw = this.values[name];
      if (typeof raw !== 'number') continue;
      const si = toSi(raw);
      if (found === null) {
        found = si;
        first = name;
      } else if (Math.abs(si - found) > DISAGREE * Math.max(Math.abs(si), Math.abs(found))) {
        this.report('warning', { code: 'units-disagree', first, second: name }, `properties.${name}`);
      }
    }
    return found;
  }

  /** A list of values made one by `combine` after conversion. */
  list(quantity: NamedQuantity, combine: (values: number[]) => number): number | null {
    for (const { name, toSi } of quantity.names) {
      const value = this.values[name];
      if (Array.isArray(value)) return combine(value.map((v) => toSi(Number(v))));
    }
    return null;
  }
}

function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>((v, key) => (v as Record<PropertyKey, unknown> | undefined)?.[key], value);
}

/** Properties that passed their schema, or null where one did not: then the issues are reported. */
export function checkProperties(
  schema: z.ZodType,
  values: Properties,
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
        ? { code: 'missing-value', expected: ruleWords(issue) }
        : {
            code: 'bad-value',
            expected: ruleWords(issue),
            got: (typeof got === 'string' ? JSON.stringify(got) : textOf(got)).slice(0, 60),
          };
    issues.add({ ...detail, severity: 'error', place: { ...place, path } });
  }
  return false;
}
