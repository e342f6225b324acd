import type { Drain } from '../model/site.js';
import { judgement } from '../tables/judgement.js';
import type { PipeRow } from '../tables/pipe-row.js';
import type { Horizon } from './horizon.js';

/** A line's age and its clocks at each moment of the horizon. */
export interface LineClock {
  /** Years since the trench was last opened and cleared of roots (or the line was laid). */
  readonly sinceDug: readonly number[];
  /** Years since roots were last cut inside, or null where that was before the last digging or never. */
  readonly sinceCut: readonly number[] | null;
  /** Factor of age on joints, 1..2. */
  readonly ageFactor: readonly number[];
  readonly ageKnown: boolean;
  /** Age now, years. */
  readonly ageYears: number;
}

/** Whether and when a line was laid, dug and cut, seen from `nowYear`. */
export function clockOf(
  drain: Pick<Drain, 'installedYear' | 'dugYear' | 'cutYear'>,
  pipe: PipeRow,
  nowYear: number,
  horizon: Horizon,
): LineClock {
  const installed = drain.installedYear ?? nowYear - pipe.assumedAgeYears.value;
  const dug = Math.max(installed, drain.dugYear ?? installed);
  const cut = drain.cutYear !== null && drain.cutYear > dug ? drain.cutYear : null;
  const slope = judgement.ageSlopeYears.value;
  const most = judgement.ageFactorMax.value;
  const at = horizon.yearsAhead.map((ahead) => nowYear + ahead);
  return {
    sinceDug: at.map((year) => Math.max(0, year - dug)),
    sinceCut: cut === null ? null : at.map((year) => Math.max(0, year - cut)),
    ageFactor: at.map((year) => Math.min(most, 1 + Math.max(0, year - installed) / slope)),
    ageKnown: drain.installedYear !== null,
    ageYears: Math.max(0, nowYear - installed),
  };
}
