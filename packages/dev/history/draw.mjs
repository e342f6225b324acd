import { exposureOf } from '../../core/dist/risk/exposure.js';
import { groupsOf } from '../../core/dist/risk/groups.js';
import { multiplierOf, TRUE_CRUSH } from './truth.mjs';

/* Slots and walls are drawn in stretches of this length, metres. */
const ALONG_M = 0.5;

/** A whole number with this mean, Poisson, by inversion. */
function poisson(mean, random) {
  let chance = Math.exp(-mean);
  let left = random() - chance;
  let n = 0;
  while (left > 0 && n < 100) {
    n += 1;
    chance *= mean / n;
    left -= chance;
  }
  return n;
}

/** A line cut up so that each part holds one joint, or half a metre of slots. */
export function partsOf(line, since) {
  const stations = [...new Set(line.joints.map(({ stationM }) => stationM))];
  const along = Array.from({ length: Math.ceil(line.lengthM / ALONG_M) - 1 }, (_, i) => (i + 1) * ALONG_M);
  const between = stations.slice(1).map((s, i) => (s + stations[i]) / 2);
  const cuts = [0, ...(line.drain.perforated ? along : between), line.lengthM];
  return cuts.slice(1).map((toM, i) => ({
    fromM: cuts[i],
    toM,
    atM: stations.find((s) => !line.drain.perforated && s >= cuts[i] && s <= toM) ?? (cuts[i] + toM) / 2,
    since,
    told: null,
  }));
}

/** Draws what came into one part since it was last clean: by the model's own expectation, times the truth. */
export function drawPart({ context, random }, line, part, year) {
  const expected = exposureOf(context, line, [part.fromM, part.toM], part.since, year);
  return {
    entries: poisson(expected.entry * multiplierOf(groupsOf(line).entry), random),
    crushed: poisson(expected.crush * TRUE_CRUSH, random) > 0,
  };
}
