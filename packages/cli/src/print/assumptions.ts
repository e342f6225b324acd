import { type Assumption, jointRow, pipeRow } from '@rootreach/core';
import { count } from './count.js';
import { depth, length, trunk, type Units } from './lengths.js';

/** Examples named before the rest are only counted. */
const MOST_EXAMPLES = 3;

interface Parts {
  readonly of: string;
  readonly id: string;
  readonly field: string;
}

/** `trees/t2/canopyRadiusM`; an id may hold a stroke itself. */
function partsOf(path: string): Parts {
  const [of = '', ...rest] = path.split('/');
  return { of, id: rest.slice(0, -1).join('/'), field: rest[rest.length - 1] ?? '' };
}

function valueWords(field: string, value: number | string, units: Units): string {
  if (field === 'material') return pipeRow(value as Parameters<typeof pipeRow>[0]).name;
  if (field === 'joint') return jointRow(value as Parameters<typeof jointRow>[0]).name;
  if (typeof value === 'string') return value;
  switch (field) {
    case 'canopyRadiusM':
      return `radius ${length(value, units)}`;
    case 'stemDiameterM':
      return trunk(value, units);
    case 'depthM':
      return depth(value, units);
    case 'pieceM':
      return length(value, units);
    case 'installed':
      return `${Math.round(value)} years old`;
    default:
      return String(value);
  }
}

function rangeWords(field: string, values: readonly (number | string)[], units: Units): string {
  const numbers = values.filter((value) => typeof value === 'number');
  if (numbers.length < values.length || numbers.length === 0) {
    return [...new Set(values.map((value) => valueWords(field, value, units)))]
      .slice(0, MOST_EXAMPLES)
      .join(' or ');
  }
  const least = valueWords(field, Math.min(...numbers), units);
  const most = valueWords(field, Math.max(...numbers), units);
  return least === most ? least : `from ${least} to ${most}`;
}

const KINDS: Readonly<Record<string, string>> = { trees: 'tree', drains: 'line' };

/** What was assumed, the same reason said once: `8 lines: depth not given: ...; taken as 24 in (a, b, c and 5 more)`. */
export function assumptionLines(assumed: readonly Assumption[], units: Units): string[] {
  const groups = new Map<string, { parts: Parts; why: string; ids: string[]; values: (number | string)[] }>();
  for (const { path, value, why } of assumed) {
    const parts = partsOf(path);
    const key = `${parts.of} ${parts.field} ${why}`;
    const group = groups.get(key) ?? { parts, why, ids: [], values: [] };
    group.ids.push(parts.id);
    group.values.push(value);
    groups.set(key, group);
  }
  return [...groups.values()]
    .sort((a, b) => b.ids.length - a.ids.length)
    .map(({ parts, why, ids, values }) => {
      const more = ids.length - MOST_EXAMPLES;
      const examples = `${ids.slice(0, MOST_EXAMPLES).join(', ')}${more > 0 ? ` and ${more} more` : ''}`;
      const taken = rangeWords(parts.field, values, units);
      return `${count(ids.length, KINDS[parts.of] ?? 'feature')}: ${why}; taken as ${taken} (${examples})`;
    });
}
