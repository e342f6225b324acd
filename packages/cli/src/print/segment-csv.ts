import {
  adviceFor,
  type RankResult,
  reasonFor,
  type SegmentResult,
  toFeet,
  type Units,
} from '@rootreach/core';
import { type Cell, csv } from './csv.js';
import { bestChange } from './segment-phrases.js';

type Column = readonly [name: string, of: (segment: SegmentResult) => Cell];

/** Places kept: a tenth of a per mille of a chance, a millimetre of a length. */
const rounded = (value: number, places: number): number => Number(value.toFixed(places));

function lengthColumn(
  name: string,
  units: Units,
  of: (segment: SegmentResult) => number | undefined,
): Column {
  const inUnit = (metres: number): number => (units === 'us' ? toFeet(metres) : metres);
  return [
    `${name}_${units === 'us' ? 'ft' : 'm'}`,
    (segment) => {
      const metres = of(segment);
      return metres === undefined ? null : rounded(inUnit(metres), 3);
    },
  ];
}

function columnsIn(units: Units): Column[] {
  const long = (name: string, of: (segment: SegmentResult) => number | undefined): Column =>
    lengthColumn(name, units, of);
  return [
    ['rank', (s) => s.rank],
    ['segment', (s) => s.id],
    ['line', (s) => s.drainId],
    ['line_name', (s) => s.drainName],
    ['band', (s) => s.band],
    ['score', (s) => rounded(s.score, 2)],
    ['chance_low', (s) => rounded(s.chance.low, 4)],
    ['chance_likely', (s) => rounded(s.chance.likely, 4)],
    ['chance_high', (s) => rounded(s.chance.high, 4)],
    ['in_worst_tenth', (s) => rounded(s.inWorstTenth, 3)],
    ['seen', (s) => s.known?.seen ?? null],
    long('start', (s) => s.startM),
    long('end', (s) => s.endM),
    long('length', (s) => s.lengthM),
    long('depth', (s) => s.depthM),
    ['go_in_at', (s) => s.reach.fromName],
    ['direction', (s) => s.reach.direction],
    long('reel_from', (s) => s.reach.atM),
    long('reel_to', (s) => s.reach.toM),
    ['material', (s) => s.material],
    ['joints', (s) => s.joints.count],
    ['tree', (s) => s.trees[0]?.id ?? null],
    ['tree_name', (s) => s.trees[0]?.name ?? null],
    long('tree_distance', (s) => s.trees[0]?.distanceM),
    ['tree_share', (s) => (s.trees[0] === undefined ? null : rounded(s.trees[0].share, 3))],
    long('in_dripline', (s) => s.overlapM.dripline),
    long('in_trunk_multiple', (s) => s.overlapM.trunkMultiple),
    long('in_structural', (s) => s.overlapM.structural),
    long('in_reach', (s) => s.overlapM.reach),
    ['expected_by_joints', (s) => rounded(s.expectedEntries.joints, 4)],
    ['expected_by_slots', (s) => rounded(s.expectedEntries.slots, 4)],
    ['expected_by_crush', (s) => rounded(s.expectedEntries.crush, 4)],
    ['why', reasonFor],
    ['advice', adviceFor],
    ['best_change', (s) => bestChange(s)?.change ?? null],
    [
      'score_with_change',
      (s) => {
        const best = bestChange(s);
        return best === undefined ? null : rounded(best.scoreWithout, 2);
      },
    ],
    ['next_look', (s) => Number(s.nextLook)],
  ];
}

/** One row a segment. @param units feet or metres; the columns' names say which. */
export function segmentCsv({ segments }: RankResult, units: Units): string {
  const columns = columnsIn(units);
  return csv([
    columns.map(([name]) => name),
    ...segments.map((segment) => columns.map(([, of]) => of(segment))),
  ]);
}
