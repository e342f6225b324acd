import { nearestOn } from '../geometry/polyline.js';
import { segmentsOf } from '../line/segments.js';
import type { Site } from '../model/site.js';
import { contextOf, type RankOptions, type RiskContext } from '../risk/context.js';
import { exposureOf } from '../risk/exposure.js';
import { placeFindings } from '../risk/known.js';
import { treesNear } from '../risk/near-trees.js';
import { type Observation, observationsOf } from '../risk/observed.js';

/** A stretch that a camera has passed, as a back-test sees it: what was expected, and what was there. */
export interface Item {
  /** Site it belongs to: left out as a whole. */
  readonly site: string;
  readonly group: string;
  readonly lengthM: number;
  readonly year: number;
  /** Expected entries by the model without findings. */
  readonly expected: number;
  readonly found: boolean;
  /** The plain baselines: metres to the nearest stem, and years since the line was laid. */
  readonly nearestTreeM: number;
  readonly ageYears: number;
}

/** Longest stretch of clean pipe that counts as one, metres: a stick, as in a ranking. */
const PART_M = 3;

function partsOf(o: Observation): { fromM: number; toM: number }[] {
  // roots said of a stretch are roots somewhere in it: cutting it up would invent where
  if (o.saw !== 'none') return [{ fromM: o.fromM, toM: o.toM }];
  return segmentsOf(o.toM - o.fromM, [], PART_M).map((s) => ({
    fromM: o.fromM + s.fromM,
    toM: o.fromM + s.toM,
  }));
}

function itemsOfObservation(context: RiskContext, site: string, o: Observation): Item[] {
  const number = context.site.drains.findIndex((d) => d.id === o.drainId);
  const line = context.lines.at(number);
  const near = treesNear(context.field, line);
  return partsOf(o).map(({ fromM, toM }) => {
    let nearest = Number.MAX_VALUE;
    for (let t = 0; t < near.count; t++) {
      const x = near.x[t] as number;
      const y = near.y[t] as number;
      nearest = Math.min(nearest, nearestOn(line.polyline, x, y, fromM, toM).distance);
    }
    const whole = o.saw !== 'none';
    return {
      site,
      group: o.group,
      lengthM: toM - fromM,
      year: o.year,
      expected: whole ? o.expected : exposureOf(context, line, [fromM, toM], o.sinceYear, o.year).entry,
      found: whole,
      nearestTreeM: nearest,
      ageYears: o.year - (line.drain.installedYear ?? context.nowYear - line.pipe.assumedAgeYears.value),
    };
  });
}

/**
 * Every stretch of a site that a camera has passed; of entries only, since breaks are rare.
 * @param site with its findings.
 * @param name of the site: the back-test leaves it out as a whole.
 * @param options as for `rank`; findings after its date are left out.
 */
export function itemsOf(site: Site, name: string, options: RankOptions): Item[] {
  const context = contextOf(site, options);
  const { byLine } = placeFindings(context.site, context.lines);
  return observationsOf(context, byLine)
    .filter((o) => !o.group.startsWith('crush/'))
    .flatMap((o) => itemsOfObservation(context, name, o));
}
