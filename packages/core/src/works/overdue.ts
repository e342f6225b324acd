import type { Site } from '../model/site.js';
import { prepareLine, type RankOptions } from '../risk/context.js';
import { knownIn, lastSeenClear } from '../risk/known.js';
import { addLoad, Load } from '../risk/load.js';
import { seenContextOf } from '../risk/seen-context.js';
import { segmentId, yearsUnseen } from '../risk/segment-result.js';
import { judgement } from '../tables/judgement.js';

/**
 * Segments whose look is due already: the chance since they were last seen clean, dug or laid has passed the target,
 * or trouble is known in them. The ranking's next look lies at least a year ahead, however long nobody has looked.
 */
export function overdueSegments(site: Site, options: RankOptions): ReadonlySet<string> {
  const { context, known } = seenContextOf(site, options);
  const target = -Math.log1p(-judgement.nextLook.value.targetChance);
  const overdue = new Set<string>();
  const load = new Load(context.field.moments, 0);
  for (let number = 0; number < context.lines.count; number++) {
    const line = context.lines.at(number);
    const prepared = prepareLine(context, line);
    const { first } = prepared.inputs.openings;
    const findings = known.get(number) ?? [];
    line.segments.forEach(({ fromM, toM }, i) => {
      load.clear(prepared.near.count);
      addLoad(prepared.inputs, first[i] as number, first[i + 1] as number, load);
      const unseen = yearsUnseen(context, line, lastSeenClear(findings, fromM, toM));
      const passed = (load.perYear[0] as number) * unseen >= target;
      if (passed || knownIn(line, findings, fromM, toM) !== null) overdue.add(segmentId(line.drain.id, i));
    });
  }
  return overdue;
}
