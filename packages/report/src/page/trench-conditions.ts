import type { CautionConditions, RankResult, SegmentResult, Site } from '@rootreach/core';

/** From the top of the pipe to the bottom of the trench: pipe and bedding (judgement). */
const BELOW_TOP_M = 0.3;
/** Half of a usual trench (judgement). */
const HALF_WIDTH_M = 0.25;

/** What digging at a stretch would mean: how deep, in what ground, and how near to a trunk. */
export function trenchConditions({
  site,
  result,
  segment,
}: {
  readonly site: Site;
  readonly result: RankResult;
  readonly segment: SegmentResult;
}): CautionConditions {
  const depthKnown = segment.assumed.every(({ path }) => !path.endsWith('/depthM'));
  const away = segment.trees.map(({ id, distanceM }) => {
    const stem = result.trees.find((tree) => tree.id === id)?.stemDiameterM;
    return stem === undefined ? 0 : Math.max(0, distanceM - HALF_WIDTH_M) / stem;
  });
  return {
    digging: true,
    trenchDepthM: depthKnown ? segment.depthM + BELOW_TOP_M : null,
    unstableGround: site.soil === 'sand',
    ...(away.length === 0 ? {} : { trunkDiametersAway: Math.min(...away), rootCutting: true }),
  };
}
