import type { PlacedFinding } from '../line/find.js';
import type { LineModel } from '../line/line-model.js';
import type { KnownTrouble } from '../model/result.js';
import type { Seen } from '../model/site.js';
import type { SeenBlockage } from '../model/water-result.js';
import { knownIn } from '../risk/known.js';
import { waterJudgement } from '../tables/judgement.js';
import { flowLeftByBed, flowLeftByLining } from './blockage.js';

/** A place at which something was seen, and the share of the clear pipe's flow that it leaves. */
export interface WorstPlace extends Omit<SeenBlockage, 'headLossM'> {
  readonly flowLeft: number;
}

/** Half the width of the window in which a point is looked at; stretches are looked at without their ends, metres. */
const POINT_HALF_M = 0.01;

/** Points and the stretches between them: within each the same was seen all along. */
function placesOf(findings: readonly PlacedFinding[]): [fromM: number, toM: number][] {
  const ends = [...new Set(findings.flatMap(({ fromM, toM }) => [fromM, toM]))].sort((a, b) => a - b);
  const points = findings.filter(({ fromM, toM }) => fromM === toM).map(({ fromM }) => fromM);
  return [
    ...ends.slice(1).map((end, i): [number, number] => [ends[i] as number, end]),
    ...points.map((at): [number, number] => [at, at]),
  ];
}

function shareOf({ blockedShare, seen }: KnownTrouble): Pick<WorstPlace, 'share' | 'shareFrom'> {
  if (blockedShare !== null) return { share: blockedShare, shareFrom: 'given' };
  const typical = waterJudgement.blockedShareBySeen.value;
  return { share: typical[seen as Exclude<Seen, 'clear'>], shareFrom: 'typical' };
}

/** Silt lies in a sag; roots and what else narrows a pipe are taken as an even lining. */
const flowLeft = (seen: Seen, share: number): number =>
  seen === 'sag' ? flowLeftByBed(share) : flowLeftByLining(share);

/** Where what was last seen and not dealt with since leaves least room for water; null where nothing is known. */
export function worstPlace(line: LineModel, findings: readonly PlacedFinding[]): WorstPlace | null {
  let worst: WorstPlace | null = null;
  for (const [fromM, toM] of placesOf(findings)) {
    // a point that a stretch begins or ends at was not seen all along it
    const wider = fromM === toM ? POINT_HALF_M : -Math.min(POINT_HALF_M, (toM - fromM) / 4);
    const known = knownIn(line, findings, fromM - wider, toM + wider);
    if (known === null) continue;
    const { share, shareFrom } = shareOf(known);
    const left = flowLeft(known.seen, share);
    if (worst !== null && left >= worst.flowLeft) continue;
    worst = { seen: known.seen, year: known.year, share, shareFrom, fromM, toM, flowLeft: left };
  }
  return worst;
}
