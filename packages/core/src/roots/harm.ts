import { type Point, type Strip, shareLeft } from '../geometry/disc-less-strip.js';
import { distanceToPath } from '../geometry/distance-to-path.js';
import type { Encroachment, HarmReason, HarmRule, TreeHarm } from '../model/tree-harm.js';
import { harmLimits } from '../tables/harm-limits.js';
import { metres } from '../units/quantity.js';
import { type Boring, boringPast } from './boring.js';
import { noDigRadius, protectionRadiusBs5837 } from './protection.js';

/** A tree as harm sees it: place in plane metres, trunk, radii of its circles. */
export interface HarmTree {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly stemDiameterM: number;
  readonly structuralM: number;
  readonly protectionM: number;
  readonly driplineM: number;
}

/** A stretch of a route, dug open or bored. */
export interface Stretch {
  /** Middle line, plane metres. */
  readonly path: readonly Point[];
  /** Of the trench or the bore, above 0. */
  readonly widthM: number;
  readonly bored: boolean;
  /** From the ground to the top of the bore; null where not known. Not asked of what is dug. */
  readonly topDepthM?: number | null;
}

const RULES: readonly HarmRule[] = ['clear', 'caution', 'arborist', 'no-dig'];

/** What follows from each reason, the gravest first. */
const RULE_OF: Readonly<Record<HarmReason, HarmRule>> = {
  'inside-3-diameters': 'no-dig',
  'severs-over-25': 'no-dig',
  'inside-structural': 'arborist',
  'severs-over-10': 'arborist',
  'inside-6-diameters': 'arborist',
  'bore-too-shallow': 'arborist',
  'inside-12-diameters': 'caution',
  'bore-starts-too-near': 'caution',
  'bore-depth-unknown': 'caution',
};

/** From a stem to the near side of a stretch. */
const gapTo = ({ x, y }: HarmTree, { path, widthM }: Stretch): number =>
  distanceToPath(path, x, y) - widthM / 2;

const least = (values: readonly number[]): number =>
  values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);

/** Which ring a dug side lies in; the rings inside one another are told once. */
function ringOf(tree: HarmTree, gapM: number): HarmReason | null {
  const stem = metres(tree.stemDiameterM);
  if (gapM < noDigRadius(stem)) return 'inside-3-diameters';
  if (gapM < harmLimits.arboristDiameters.value * stem) return 'inside-6-diameters';
  return gapM < protectionRadiusBs5837(stem) ? 'inside-12-diameters' : null;
}

function reasonsOfDigging(tree: HarmTree, dugM: number, severed: number): HarmReason[] {
  const reasons: HarmReason[] = [];
  const ring = ringOf(tree, dugM);
  if (ring) reasons.push(ring);
  if (dugM < tree.structuralM) reasons.push('inside-structural');
  if (severed > harmLimits.tooMuchShare.value) reasons.push('severs-over-25');
  else if (severed > harmLimits.minorShare.value) reasons.push('severs-over-10');
  return reasons;
}

function reasonsOfBoring(
  tree: HarmTree,
  dugM: number,
  bores: readonly Stretch[],
  { startM, depthM }: Boring,
): HarmReason[] {
  const near = bores.filter((bore) => gapTo(tree, bore) < Math.max(startM, tree.protectionM));
  if (near.length === 0) return [];
  const reasons: HarmReason[] = [];
  if (dugM < startM) reasons.push('bore-starts-too-near');
  if (near.some((bore) => gapTo(tree, bore) < tree.structuralM)) reasons.push('inside-structural');
  const depths = near.map(({ topDepthM }) => topDepthM ?? null);
  if (depths.some((depth) => depth !== null && depth < depthM)) reasons.push('bore-too-shallow');
  if (depths.includes(null)) reasons.push('bore-depth-unknown');
  return reasons;
}

/** The gravest first, each once. */
function ordered(reasons: readonly HarmReason[]): HarmReason[] {
  return (Object.keys(RULE_OF) as HarmReason[]).filter((reason) => reasons.includes(reason));
}

function encroachmentOf(severed: number, structural: boolean): Encroachment {
  if (severed > harmLimits.tooMuchShare.value) return 'too-much';
  if (severed > harmLimits.minorShare.value || structural) return 'major';
  return severed > 0 ? 'minor' : 'none';
}

function harmTo(tree: HarmTree, dug: readonly Stretch[], bores: readonly Stretch[]): TreeHarm {
  const dugM = least(dug.map((stretch) => gapTo(tree, stretch)));
  const boredM = least(bores.map((stretch) => gapTo(tree, stretch)));
  const strips: Strip[] = dug.map(({ path, widthM }) => ({ path, halfWidthM: widthM / 2 }));
  const severedShare =
    dugM < tree.protectionM ? 1 - shareLeft([tree.x, tree.y], tree.protectionM, strips) : 0;
  const reasons = ordered([
    ...reasonsOfDigging(tree, dugM, severedShare),
    ...reasonsOfBoring(tree, dugM, bores, boringPast(tree.stemDiameterM, tree.driplineM)),
  ]);
  const gravest = reasons.map((reason) => RULES.indexOf(RULE_OF[reason]));
  return {
    id: tree.id,
    nearestM: Math.min(dugM, boredM),
    nearestDugM: dug.length === 0 ? null : dugM,
    severedShare,
    encroachment: encroachmentOf(severedShare, dugM < tree.structuralM),
    rule: RULES[Math.max(0, ...gravest)] ?? 'clear',
    reasons,
  };
}

/**
 * Harm of a route to each tree, in the order of the trees.
 *
 * - no-dig: a dug side within 3 trunk diameters of the stem (Smiley 2008), or more than a quarter of the protection
 *   circle lost (judgement);
 * - arborist: within 6 diameters (guide to ANSI A300 part 8), inside the structural roots, or more than a tenth of
 *   the circle lost (AS 4970-2009: major), or a bore that is too shallow;
 * - caution: within 12 diameters (BS 5837:2012), or a bore that starts too near or of unknown depth.
 *
 * What is lost of the circle is what the trench takes and what it cuts off from the stem: exact for straight and
 * bent trenches, and equal to the circular segment for a straight one right through. A bore takes nothing.
 * @throws RangeError where there is no stretch, or one has no point or no width.
 */
export function harmOf(trees: readonly HarmTree[], stretches: readonly Stretch[]): TreeHarm[] {
  if (stretches.length === 0) throw new RangeError('stretches must hold at least one');
  const odd = stretches.find(({ path, widthM }) => path.length === 0 || !(widthM > 0));
  if (odd)
    throw new RangeError(
      `a stretch must have points and a width above 0, got ${odd.path.length} points, ${odd.widthM} m`,
    );
  const dug = stretches.filter(({ bored }) => !bored);
  const bores = stretches.filter(({ bored }) => bored);
  return trees.map((tree) => harmTo(tree, dug, bores));
}
