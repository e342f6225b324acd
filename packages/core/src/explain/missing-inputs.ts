import type { SegmentResult } from '../model/result.js';
import { judgement } from '../tables/judgement.js';
import { modelConstants } from '../tables/model-constants.js';

/** What may not be known of a line. */
export type LineField = 'material' | 'installed' | 'depthM';
/** What may not be known of a tree. */
export type TreeField = 'stemDiameterM' | 'species' | 'canopyRadiusM';

/** A missing input, and by how much it widens the answer. */
export interface MissingInput {
  readonly of: 'line' | 'tree';
  readonly id: string;
  readonly field: LineField | TreeField;
  /** Standard deviation of the logarithm that it brings to the segment's load. */
  readonly logSd: number;
}

const LINE_LOG_SD: Readonly<Record<LineField, number>> = {
  material: judgement.materialUnknown.logSd,
  installed: judgement.ageUnknown.logSd,
  depthM: judgement.depthUnknown.logSd,
};

const TREE_LOG_SD: Readonly<Record<TreeField, number>> = {
  stemDiameterM: judgement.stemUnknown.logSd,
  species: judgement.speciesUnknown.logSd,
  canopyRadiusM: modelConstants.crownFromStemLogSd.value,
};

const isLineField = (field: string): field is LineField => Object.hasOwn(LINE_LOG_SD, field);
const isTreeField = (field: string): field is TreeField => Object.hasOwn(TREE_LOG_SD, field);

/**
 * What is missing about a segment, what would narrow its range most first. A tree's inputs count by its share of
 * the load; the spreads are those that the range itself is made of (our judgement).
 */
export function missingInputs({ assumed, trees }: SegmentResult): MissingInput[] {
  return assumed
    .flatMap(({ path }): MissingInput[] => {
      const [of, id, field = ''] = pathParts(path);
      if (of === 'drains' && isLineField(field))
        return [{ of: 'line', id, field, logSd: LINE_LOG_SD[field] }];
      const share = trees.find((tree) => tree.id === id)?.share;
      if (of !== 'trees' || share === undefined || !isTreeField(field)) return [];
      return [{ of: 'tree', id, field, logSd: share * TREE_LOG_SD[field] }];
    })
    .sort((a, b) => b.logSd - a.logSd);
}

/** `trees/t2/canopyRadiusM`; an id may hold a slash. */
function pathParts(path: string): [of: string, id: string, field: string] {
  const first = path.indexOf('/');
  const last = path.lastIndexOf('/');
  return [path.slice(0, first), path.slice(first + 1, last), path.slice(last + 1)];
}
