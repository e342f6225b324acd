import type { HarmReason, NoRoute, RouteAlternative, RouteResult, Units } from '@rootreach/core';
import { percent } from './chance.js';
import { depth, length, span } from './lengths.js';

const REASONS: Readonly<Record<HarmReason, string>> = {
  'inside-3-diameters': 'inside 3 trunk diameters',
  'severs-over-25': 'cuts off more than a quarter of its root circle',
  'inside-structural': 'among the roots that hold it up',
  'severs-over-10': 'cuts off more than a tenth of its root circle',
  'inside-6-diameters': 'inside 6 trunk diameters',
  'bore-too-shallow': 'the bore is too shallow',
  'inside-12-diameters': 'inside 12 trunk diameters',
  'bore-starts-too-near': 'the bore starts too near',
  'bore-depth-unknown': 'depth of the bore not known',
};

const RULES = {
  'no-dig': 'do not dig',
  arborist: 'with an arborist only',
  caution: 'with care',
  clear: '',
} as const;

/** What to mind at each tree that an alternative comes near. */
function treeNotes({ trees }: RouteAlternative, units: Units): string[] {
  return trees
    .filter(({ rule }) => rule !== 'clear')
    .map(({ id, rule, nearestM, reasons }) => {
      const [first] = reasons;
      const why = first === undefined ? '' : ` (${REASONS[first]})`;
      return `tree ${id} at ${length(Math.max(0, nearestM), units)}: ${RULES[rule]}${why}`;
    });
}

/** Every tree that loses something or is near, with its share and distance. */
export const everyTree = ({ trees }: Pick<RouteAlternative, 'trees'>, units: Units): string[] =>
  trees
    .filter(({ rule, severedShare }) => rule !== 'clear' || severedShare > 0)
    .map(({ id, nearestM, severedShare, rule }) => {
      const share = severedShare > 0 ? `, ${percent(severedShare)} % of its root circle cut` : '';
      const what = rule === 'clear' ? '' : `: ${RULES[rule]}`;
      return `tree ${id} at ${length(Math.max(0, nearestM), units)}${share}${what}`;
    });

/** What to know of one alternative before it is dug. */
export function alternativeNotes(route: RouteAlternative, squareDegrees: number, units: Units): string[] {
  const crossings = route.crossings.map(({ name, id, atM, angleDegrees }) => {
    const slant = angleDegrees < squareDegrees ? `, at ${Math.round(angleDegrees)} degrees` : '';
    return `crosses ${name ?? id} at ${length(atM, units)}${slant}: have it located first, uncover it by hand`;
  });
  const bored = route.stretches
    .filter(({ way }) => way === 'bored')
    .map(({ fromM, toM }) => `bore under paving from ${span(fromM, toM, units)}`);
  const below = route.outletBelowM ?? 0;
  const shallow = route.coverM === null ? 0 : (route.depthM?.max ?? 0) - route.coverM.max;
  const riser =
    below > shallow + 0.03
      ? [`ends ${depth(below, units)} below the ground: bring it up through a riser under a grate`]
      : [];
  return [...treeNotes(route, units), ...crossings, ...bored, ...riser];
}

const REMEDY = {
  'raise-source': 'let the water in higher by',
  'lower-outlet': 'let it come out lower by',
  pump: 'lift it with a pump by',
} as const;

function remedyText(
  remedy: Extract<NoRoute, { reason: 'no-fall' }>['remedies'][number],
  units: Units,
): string {
  switch (remedy.kind) {
    case 'raise-source':
    case 'lower-outlet':
      return `${REMEDY[remedy.kind]} ${depth(remedy.byM, units)}`;
    case 'pump':
      return `${REMEDY.pump} ${depth(remedy.liftM, units)}`;
    case 'dig-deeper':
      return `dig down to ${depth(remedy.maxDepthM, units)}`;
    case 'less-cover':
      return `do with ${depth(remedy.minCoverM, units)} of cover`;
    case 'flatter':
      return `lay it at ${(100 * remedy.fall).toFixed(2)} %`;
    case 'dry-well':
      return `let it soak away in a dry well ${length(remedy.atM, units)} along`;
  }
}

/** Why there is no route, and what would make one. */
export function noRouteLines(none: NoRoute, units: Units): string[] {
  if (none.reason === 'blocked') return [`There is no way: ${none.message}.`];
  const short = depth(Math.max(0.01, none.shortfallM), units);
  const what = none.remedies.map((remedy) => remedyText(remedy, units));
  return [
    `No gravity line: on the way that fails least, ${short} of fall is missing ${length(none.atM, units)} from the start.`,
    ...(what.length === 0 ? [] : [`Any one of these would make one: ${what.join('; ')}.`]),
  ];
}

/** What was taken as given, in a few words. */
export function assumedLine({ assumed }: Pick<RouteResult, 'assumed'>, units: Units): string | null {
  const parts = assumed.flatMap(({ path, value, why }) => {
    if (path === 'route/minFall') return [`fall of at least ${(100 * Number(value)).toFixed(2)} %`];
    if (path === 'route/minCoverM') return [`cover of at least ${depth(Number(value), units)}`];
    if (path === 'route/maxDepthM') return [`no deeper than ${depth(Number(value), units)}`];
    return path === 'route/prices' ? [] : [why];
  });
  return parts.length === 0 ? null : `Taken as given: ${parts.join('; ')}.`;
}
