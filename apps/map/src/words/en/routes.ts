import type {
  FallRemedy,
  HarmRule,
  NoRoute,
  NoSharedRoute,
  RouteAim,
  RouteResult,
  SheetWay,
  Units,
} from '@rootreach/core';
import * as measure from '../../measure.js';

const percent = (share: number): string =>
  share > 0 && share < 0.0005 ? '<\u00a00.1\u00a0%' : `${(100 * share).toFixed(share < 0.1 ? 1 : 0)}\u00a0%`;

/** Texts of new lines. */
export const routes = {
  title: 'Plan a new line',
  intro: 'Say where the water comes in and where it may come out. The plan shows ways round the trees.',
  tooLarge: 'This site is too large to plan on here.',
  noTrees: 'There is no tree on the sketch yet: draw the trees first, or the way will not spare them.',
  placeLabel: (end: 'from' | 'to', at: number, of: number): string => {
    const name = end === 'from' ? 'Where the water comes in' : 'Where it comes out';
    return of > 1 ? `${name}, ${at + 1}` : name;
  },
  another: { from: 'One more start', to: 'One more outlet' },
  remove: 'Remove',
  removePlace: (label: string) => `Remove: ${label}`,
  drains: (units: Units) => `Roof or ground that drains there, ${units === 'us' ? 'ft²' : 'm²'} (if known)`,
  rain: (units: Units) => `Heaviest rain to carry, ${units === 'us' ? 'inches' : 'mm'} an hour`,
  sizing: 'With rain and areas the pipe is sized by its water; without them it keeps the size below.',
  via: 'A point to pass',
  chooseFitting: 'choose, or tap the plan',
  aPlace: 'the place tapped on the plan',
  tapPlan: 'Tap the plan',
  tapping: {
    from: 'Tap where the water comes in.',
    to: 'Tap where it comes out.',
    via: 'Tap a point that the line should pass.',
  },
  midPlan: 'Set it mid-plan, then move it',
  found: (n: number) =>
    n === 1
      ? 'One way: no other is better at anything.'
      : `${n} ways, each better than the others at something.`,
  drop: 'Without it',
  pipe: 'Pipe',
  size: 'Size',
  perforated: 'Perforated (takes water in along its way)',
  fall: 'Least fall',
  falls: { '0.005': '0.5 %', '0.01': '1 % (1/8 in a foot)', '0.02': '2 % (1/4 in a foot)' },
  go: 'Show the ways',
  again: 'Work out again',
  working: (share: number) => `Looking for ways: ${Math.round(100 * share)} %`,
  cancel: 'Stop',
  forget: 'Start over',
  failed: (why: string) => `That did not work out: ${why}.`,
  ways: 'The ways, side by side',
  aims: {
    cheapest: 'Cheapest to dig',
    'fewest-roots': 'Fewest roots',
    'spares-trees': 'Sparing the trees',
    balanced: 'Balanced',
    via: 'Through your point',
    drawn: 'As you drew it',
  } satisfies Record<RouteAim, string>,
  figures: {
    outlet: 'Comes out at',
    length: 'Length',
    bends: 'Bends',
    joints: 'Joints near roots',
    ten: 'Roots within 10 years',
    twentyFive: 'Roots within 25 years',
    depth: 'Trench depth',
    now: 'Price to lay it',
    present: 'With root trouble to come',
    worst: 'Tree hurt most',
  },
  chance: ({ low, likely, high }: { readonly low: number; readonly likely: number; readonly high: number }) =>
    `${percent(likely)} (${percent(low)} to ${percent(high)})`,
  unknownDepth: 'ground not known',
  severed: (share: number) => `${percent(share)} of its circle`,
  noHarm: 'none',
  trees: 'The trees on this way',
  tree: (name: string, nearest: string, share: number) =>
    share > 0
      ? `${name}: ${nearest} from the trunk, ${percent(share)} of its root circle cut`
      : `${name}: ${nearest} from the trunk`,
  rules: {
    clear: 'no harm to speak of',
    caution: 'dig with care',
    arborist: 'an arborist looks first',
    'no-dig': 'no trench here',
  } satisfies Record<HarmRule, string>,
  breaks: 'This way breaks a limit. Pull the bend elsewhere, or change the limit.',
  crossings: (n: number) =>
    `Crosses ${n === 1 ? 'a buried service' : `${n} buried services`}: have it located and uncover it by hand.`,
  bored: (length: string) => `${length} is bored, not dug.`,
  handDug: (length: string) => `${length} is dug by hand, near a trunk.`,
  pullHint: 'Pull a bend on the plan, or move it with the arrow keys: all figures follow.',
  pipes: 'Other pipes on the cheapest way over the years',
  pipeName: ({ name }: RouteResult['pipes'][number]): string => name,
  pipeRow: (name: string, chance: string, price: string) => `${name}: ${chance} within 25 years, ${price}`,
  adopt: 'Put it on the sketch',
  adopted: 'New line',
  newLine: 'New line',
  invented: 'Prices are invented for this example. Put in your own under Work.',
  money: (amount: number, currency: string) =>
    new Intl.NumberFormat('en-US', { style: 'currency', currency, maximumFractionDigits: 0 }).format(amount),
  bend: (n: number) => `Bend ${n}: pull, or move with the arrow keys`,
  none: (none: NoRoute | NoSharedRoute, units: Units) =>
    none.shortfallM === null
      ? 'There is no way: buildings, trees or the lot line stand between.'
      : `The water will not run there by itself: ${measure.depth(none.shortfallM, units)} of fall is missing.`,
  remedy: (one: FallRemedy, units: Units): string => {
    switch (one.kind) {
      case 'raise-source':
        return `let the water in ${measure.depth(one.byM, units)} higher`;
      case 'lower-outlet':
        return `bring it out ${measure.depth(one.byM, units)} lower`;
      case 'dig-deeper':
        return `dig down to ${measure.depth(one.maxDepthM, units)}`;
      case 'less-cover':
        return `lay it with ${measure.depth(one.minCoverM, units)} of cover`;
      case 'flatter':
        return `lay it flatter, at ${percent(one.fall)}`;
      case 'pump':
        return `pump it up ${measure.depth(one.liftM, units)}`;
      case 'dry-well':
        return `let it soak away after ${measure.length(one.atM, units)}`;
    }
  },
  remedies: 'What would help, each by itself:',
  shared: {
    shapes: { shared: 'Shared main', separate: 'A line for each' },
    saves: (money: string) => `Shared main: ${money} less than a line for each.`,
    noneShared: 'A line for each start: sharing a trench would not be better here.',
    onlyShared: 'Only lines that share a main can fall all the way here.',
    start: (n: number, fitting: string | null) =>
      fitting === null ? `start ${n}` : `start ${n} (${fitting})`,
    meeting: (letter: string) => `meeting ${letter}`,
    /** @param n its number, where there are several. */
    outlet: (n: number | null, fitting: string | null) => {
      if (n === null) return fitting === null ? 'outlet' : `outlet ${fitting}`;
      return fitting === null ? `outlet ${n}` : `outlet ${n} (${fitting})`;
    },
    line: (isMain: boolean, from: string, to: string) => `${isMain ? 'Main' : 'Branch'}: ${from} to ${to}`,
    pipe: (length: string, size: string) => `${length} of ${size} pipe`,
    carries: (flow: string) => `for ${flow}`,
    laid: (least: string, most: string, fall: number) =>
      `${least === most ? least : `${least} to ${most}`} deep, ${fall < 0.25 ? `falls ${percent(fall)} or more` : 'drops to the main'}`,
    tooMuch: (pipes: number, flow: string, bore: string) =>
      `The largest pipe known takes ${flow}: lay ${pipes} side by side, or one of ${bore} inside, or split the water. The price is that of one pipe.`,
    unsized: 'Pipe was not sized by its water: rain, or what drains to a start, is not given.',
    crew: 'For the crew: how to dig near the trees',
    ways: {
      'do-not-dig': 'do not dig',
      arborist: 'only with an arborist, by hand or air',
      bore: 'bore under the roots',
      'hand-or-air': 'by hand or air',
    } satisfies Record<SheetWay, string>,
    askBefore: (root: string) => `Do not cut a root of ${root} or more: dig under it, and ask an arborist.`,
    cannotFall: 'These lines cannot fall all the way. Choose the others.',
    tooHard: 'This would take too much of a tree. Move a start or the outlet.',
  },
  legend: (name: string) => `Line pattern of “${name}”`,
};
