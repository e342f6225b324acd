import type { Chance } from './chance.js';
import { KEYS, NOT_NUMBERS, NUMBERS, TEXTS, WORDS } from './hostile.js';
import { copyOf, putAt, type Slot, slotsOf, type Tree, textOfTree, treeAt, treeOf } from './json-tree.js';

const EMPTY: readonly string[] = ['null', 'true', 'false', '[]', '{}', '[[]]', '[null]', '""', '[{}]'];

/** Any value, as it is written. */
export function anyValue(chance: Chance): string {
  switch (chance.below(8)) {
    case 0:
    case 1:
      return chance.pick(NUMBERS);
    case 2:
    case 3:
      return JSON.stringify(chance.pick(TEXTS));
    case 4:
    case 5:
      return JSON.stringify(chance.pick(WORDS));
    case 6:
      return chance.happens(0.3) ? JSON.stringify(chance.pick(NOT_NUMBERS)) : chance.pick(NUMBERS);
    default:
      return chance.pick(EMPTY);
  }
}

const isNumber = (raw: string): boolean => /^-?\d/.test(raw);

/** A number moved, turned, made huge or tiny, or written as text with a unit. */
function otherNumber(raw: string, chance: Chance): string {
  const value = Number(raw);
  return chance.pick([
    String(-value),
    String(value * 1000),
    String(value / 1000),
    String(value + (chance.happens(0.5) ? 1e-7 : -1e-5)),
    `${raw}${'0'.repeat(chance.below(30))}1`,
    JSON.stringify(raw),
    JSON.stringify(`${raw} ${chance.pick(['in', 'ft', 'm', 'cm', '%', ''])}`),
    `${raw.split('e')[0]}e${chance.pick(['300', '-300', '5', '-5'])}`,
  ]);
}

function nested(chance: Chance): string {
  const depth = chance.pick([3, 50, 1500, 12_000]);
  const [open, close] = chance.pick([
    ['[', ']'],
    ['{"a":', '}'],
    ['{"geometries":[', ']}'],
  ] as const);
  return `${open.repeat(depth)}0${close.repeat(depth)}`;
}

type Change = (slot: Slot, all: readonly Slot[], chance: Chance) => void;

const changes: readonly Change[] = [
  (slot, _, chance) => putAt(slot, { raw: anyValue(chance) }),
  (slot, _, chance) => putAt(slot, { raw: anyValue(chance) }),
  (slot, _, chance) => {
    const one = treeAt(slot);
    putAt(slot, { raw: 'raw' in one && isNumber(one.raw) ? otherNumber(one.raw, chance) : anyValue(chance) });
  },
  ({ holder, at }) => {
    if ('items' in holder) holder.items.splice(at, 1);
    else holder.members.splice(at, 1);
  },
  (slot, _, chance) => {
    const { holder, at } = slot;
    const more = Array.from({ length: chance.few(4) }, () => copyOf(treeAt(slot)));
    if ('items' in holder) holder.items.splice(at, 0, ...more);
    else holder.members.splice(at, 0, [holder.members[at]?.[0] ?? '', more[0] as Tree]);
  },
  ({ holder, at }, _, chance) => {
    const name = chance.happens(0.8) ? chance.pick(KEYS) : chance.pick(TEXTS);
    if ('members' in holder) (holder.members[at] as [string, Tree])[0] = name;
    else holder.items.splice(at, 0, { raw: anyValue(chance) });
  },
  ({ holder, at }, _, chance) => {
    const name = chance.happens(0.8) ? chance.pick(KEYS) : chance.pick(TEXTS);
    const value: Tree = { raw: anyValue(chance) };
    if ('members' in holder) holder.members.splice(at, 0, [name, value]);
    else holder.items.splice(at, 0, value);
  },
  (slot, all, chance) => putAt(slot, copyOf(treeAt(chance.pick(all)))),
  (slot, _, chance) => {
    const one = copyOf(treeAt(slot));
    putAt(slot, chance.happens(0.5) ? { items: [one] } : { members: [[chance.pick(KEYS), one]] });
  },
  (slot, _, chance) => {
    if (chance.happens(0.15)) putAt(slot, { raw: nested(chance) });
    else putAt(slot, { members: [['__proto__', { members: [['polluted', { raw: '"x"' }]] }]] });
  },
];

/** The same JSON changed in a few places. */
export function mutatedJson(value: unknown, chance: Chance, most = 5): string {
  const tree = treeOf(value);
  for (let left = chance.few(most); left > 0; left--) {
    const all = slotsOf(tree);
    if (all.length === 0) break;
    chance.pick(changes)(chance.pick(all), all, chance);
  }
  return textOfTree(tree);
}
