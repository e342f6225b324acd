import {
  type LineWater,
  type Seen,
  type Units,
  type WaterGap,
  type WaterResult,
  wordWaterGap,
  wordWaterWarning,
} from '@rootreach/core';
import { count } from './count.js';
import { depth, length, span } from './lengths.js';
import { UNKNOWN } from './water-columns.js';
import { flow, percent, slopeRange, velocity, velocityRange } from './water-numbers.js';

/** Gaps told once for the whole list, or by another word in the row. */
const TOLD_ELSEWHERE: readonly WaterGap[] = ['rain-not-given', 'nothing-seen', 'no-fall', 'foul'];

/** Gaps that many lines share, and what to do about them. */
const SHARED: Readonly<Partial<Record<WaterGap, string>>> = {
  'size-not-given': 'look at an end or a fitting',
  'depths-not-given': 'measure down at both ends, or give --slope PERCENT',
  'levels-not-given': 'take spot levels there, or give --slope PERCENT',
  'one-level-for-both-ends': 'take one at each end, or give --slope PERCENT',
  'area-not-given': 'measure the roof and paving that run to it (serves_ft2 or serves_m2)',
};

const isShared = (why: WaterGap): boolean => SHARED[why] !== undefined;

/** `4 lines: no ground level near both ends: take spot levels there, ...`. */
export function sharedGaps({ lines }: WaterResult): string[] {
  return Object.entries(SHARED).flatMap(([gap, todo]) => {
    const why = gap as WaterGap;
    const many = lines.filter(({ unknown }) => unknown.some((each) => each.why === why)).length;
    return many === 0 ? [] : [`${count(many, 'line')}: ${wordWaterGap(why)}; ${todo}`];
  });
}

function numbersOf(line: LineWater, result: WaterResult, units: Units) {
  const { fullVelocityMs, selfCleansingSlope, blockage, withRootsM3s } = line;
  return {
    cleansing: velocity(result.selfCleansingMs, units),
    velocity: fullVelocityMs === null ? UNKNOWN : velocityRange(fullVelocityMs, units),
    slopeNeeded: selfCleansingSlope === null ? UNKNOWN : slopeRange(selfCleansingSlope),
    headLoss: blockage?.headLossM == null ? UNKNOWN : depth(blockage.headLossM, units),
    withRoots: withRootsM3s === null ? UNKNOWN : flow(withRootsM3s.mid, units),
  };
}

const SEEN: Readonly<Record<Seen, string>> = {
  clear: 'nothing',
  fine: 'fine roots',
  mass: 'a root mass',
  full: 'full of roots',
  crushed: 'crushed',
  sag: 'a sag',
  offset: 'an offset joint',
};

function seenWords({ blockage }: LineWater, units: Units): string[] {
  if (blockage === null) return [];
  const { seen, share, shareFrom, fromM, toM, year } = blockage;
  const where = fromM === toM ? length(fromM, units) : span(fromM, toM, units);
  const when = year === null ? '' : ` in ${Math.floor(year)}`;
  const lost = `${percent(share)} of the bore`;
  const how = shareFrom === 'given' ? `${lost} by the log` : `taken as ${lost}`;
  return [`seen${when}: ${SEEN[seen]} ${where} up from its outlet end, ${how}`];
}

/** What stands below a line's numbers. */
export function waterNotes(line: LineWater, result: WaterResult, units: Units): string[] {
  const gaps = line.unknown.filter(({ why }) => !TOLD_ELSEWHERE.includes(why) && !isShared(why));
  const numbers = numbersOf(line, result, units);
  return [
    ...seenWords(line, units),
    ...line.warnings.map((warning) => wordWaterWarning(warning, numbers)),
    ...new Set(gaps.map(({ why }) => wordWaterGap(why))),
  ];
}
