import { type Assumption, jointRow, pipeRow, type Units } from '@rootreach/core';
import { count } from './count.js';
import { depth, length, pipeSize, span, trunk } from './lengths.js';
import { percent } from './water-numbers.js';

/** Examples named before the rest are only counted. */
const MOST_EXAMPLES = 3;

type Value = Assumption['value'];

interface Parts {
  readonly of: string;
  readonly id: string;
  readonly field: string;
}

interface Group extends Parts {
  readonly whys: Set<string>;
  readonly ids: string[];
  readonly values: Value[];
}

/** `trees/t2/canopyRadiusM`; an id may hold a stroke itself. */
function partsOf(path: string): Parts {
  const [of = '', ...rest] = path.split('/');
  return { of, id: rest.slice(0, -1).join('/'), field: rest[rest.length - 1] ?? '' };
}

function nameOf(field: string, value: Value): string {
  if (field === 'material') return pipeRow(value as Parameters<typeof pipeRow>[0]).name;
  if (field === 'joint') return jointRow(value as Parameters<typeof jointRow>[0]).name;
  return String(value);
}

function numbersIn(field: string, least: number, most: number, units: Units): string {
  const between = (word: (metres: number) => string): string =>
    word(least) === word(most) ? word(least) : `${word(least)} to ${word(most)}`;
  switch (field) {
    case 'canopyRadiusM':
    case 'pieceM': {
      const one = length(least, units) === length(most, units);
      const text = one ? length(least, units) : span(least, most, units);
      return field === 'pieceM' ? text : `a radius of ${text}`;
    }
    case 'stemDiameterM':
      return between((metres) => trunk(metres, units));
    case 'depthM':
      return between((metres) => depth(metres, units));
    case 'insideDiameterM':
      return between((metres) => pipeSize(metres, units));
    case 'slope':
    case 'blockedShare':
      return between(percent);
    case 'installed':
      return `${between((years) => String(Math.round(years)))} years old`;
    default:
      return between(String);
  }
}

function taken({ field, values }: Group, units: Units): string {
  const numbers = values.filter((value) => typeof value === 'number');
  if (numbers.length === values.length) {
    return numbersIn(field, Math.min(...numbers), Math.max(...numbers), units);
  }
  const names = [...new Set(values.map((value) => nameOf(field, value)))];
  const more = names.length > MOST_EXAMPLES ? ' and others' : '';
  return `${names.slice(0, MOST_EXAMPLES).join(', ')}${more}`;
}

/** Reasons that differ only in the kind of pipe or tree are one reason. */
const KIND_OF = /\b(the usual one|by measured) .*$/;

const OF_KIND: Readonly<Record<string, string>> = {
  'the usual one': 'of its pipe',
  'by measured': 'trees of its kind',
};

function groupsOf(assumed: readonly Assumption[]): Group[] {
  const groups = new Map<string, Group>();
  for (const { path, value, why } of assumed) {
    const parts = partsOf(path);
    const key = `${parts.of} ${parts.field} ${why.replace(KIND_OF, '$1')}`;
    const group = groups.get(key) ?? { ...parts, whys: new Set(), ids: [], values: [] };
    group.whys.add(why);
    group.ids.push(parts.id);
    group.values.push(value);
    groups.set(key, group);
  }
  return [...groups.values()].sort((a, b) => b.ids.length - a.ids.length);
}

const KINDS: Readonly<Record<string, string>> = { trees: 'tree', drains: 'line' };

/** What was assumed, each reason once: `8 lines: depth not given: ...; taken as 24 in (a, b, c and 5 more)`. */
export function assumptionLines(assumed: readonly Assumption[], units: Units): string[] {
  return groupsOf(assumed).map((group) => {
    const { ids, whys } = group;
    const more = ids.length - MOST_EXAMPLES;
    const examples = `${ids.slice(0, MOST_EXAMPLES).join(', ')}${more > 0 ? ` and ${more} more` : ''}`;
    const [why = ''] = whys;
    const reason =
      whys.size === 1 ? why : why.replace(KIND_OF, (_, start: string) => `${start} ${OF_KIND[start]}`);
    const whose = count(ids.length, KINDS[group.of] ?? 'feature');
    return `${whose}: ${reason}; taken as ${taken(group, units)} (${examples})`;
  });
}
