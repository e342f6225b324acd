import type { Issue } from '../model/issue.js';
import type { Site } from '../model/site.js';
import { contextOf, type MadeBefore, type RankOptions, type RiskContext } from './context.js';
import { type KnownByLine, placeFindings } from './known.js';
import { type Observation, observationsOf } from './observed.js';

/** A site ready for scoring with what cameras saw of its lines taken in. */
export interface SeenContext {
  readonly context: RiskContext;
  readonly known: KnownByLine;
  /** Findings whose counter cannot be right. */
  readonly misplaced: readonly Issue[];
}

/** What the camera saw, by the id of the line it was seen on. */
function ownObservations(context: RiskContext, known: KnownByLine): Map<string, Observation[]> {
  const own = new Map<string, Observation[]>();
  for (const observation of observationsOf(context, known)) {
    const list = own.get(observation.drainId);
    if (list) list.push(observation);
    else own.set(observation.drainId, [observation]);
  }
  return own;
}

/** @throws RangeError when the date, horizon or segment length is unusable. */
export function seenContextOf(site: Site, options: RankOptions, made?: MadeBefore): SeenContext {
  const context = contextOf(site, options, { made });
  const { byLine: known, issues: misplaced } = placeFindings(context.site, context.lines);
  return { context: { ...context, own: ownObservations(context, known) }, known, misplaced };
}
