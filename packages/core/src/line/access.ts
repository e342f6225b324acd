import type { Reach } from '../model/result.js';
import type { FittingType } from '../model/site.js';
import type { LineModel, PlacedFitting } from './line-model.js';

/** Fittings through which a camera or jet goes in. */
const WAYS_IN: readonly FittingType[] = ['basin', 'cleanout', 'downspout'];

const NAMES: Partial<Record<FittingType, string>> = {
  basin: 'basin',
  cleanout: 'cleanout',
  downspout: 'downspout',
};

function candidates(line: LineModel): { from: string; fromName: string; stationM: number }[] {
  const ways = line.fittings
    .filter((f: PlacedFitting) => WAYS_IN.includes(f.type))
    .map((f) => ({ from: f.id, fromName: `${NAMES[f.type]} ${f.id}`, stationM: f.stationM }));
  const has = (stationM: number): boolean => ways.some((w) => w.stationM === stationM);
  if (line.fittings.some((f) => f.type === 'outlet' && f.stationM === 0) && !has(0)) {
    ways.push({ from: 'outlet end', fromName: 'the outlet', stationM: 0 });
  }
  if (ways.length > 0) return ways;
  return [
    { from: 'outlet end', fromName: 'the lower end', stationM: 0 },
    { from: 'upper end', fromName: 'the upper end', stationM: line.lengthM },
  ];
}

/** Where a crew starts to reach a stretch of line: the way in with the shortest push to its far end. */
export function reachFor(line: LineModel, fromM: number, toM: number): Reach {
  let best: Reach | null = null;
  for (const { from, fromName, stationM } of candidates(line)) {
    const upstream = stationM <= (fromM + toM) / 2;
    const near = Math.max(0, upstream ? fromM - stationM : stationM - toM);
    const far = upstream ? toM - stationM : stationM - fromM;
    if (best === null || far < best.toM) {
      best = { from, fromName, direction: upstream ? 'upstream' : 'downstream', atM: near, toM: far };
    }
  }
  return best as Reach;
}
