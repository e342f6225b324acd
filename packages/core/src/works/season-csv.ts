import type { SeasonResult } from '../model/season.js';
import type { Units } from '../model/site.js';
import { csvText } from '../prices/csv.js';
import { toFeet } from '../units/length.js';

/**
 * One row a push of the camera.
 * @param season as `seasonOf` gives it.
 * @param units feet or metres in the columns.
 */
export function seasonCsv({ looks }: SeasonResult, units: Units): string {
  const unit = units === 'us' ? 'ft' : 'm';
  const along = (lengthM: number): number => Number((units === 'us' ? toFeet(lengthM) : lengthM).toFixed(2));
  return csvText([
    [
      'site',
      'day',
      'due',
      'overdue',
      'line',
      'line_name',
      'from',
      'direction',
      `push_to_${unit}`,
      `expect_from_${unit}`,
      `expect_to_${unit}`,
      'chance_pct',
      'seen_before',
      'seen',
      'segments',
      'uid',
    ],
    ...looks.map((look) => [
      look.site,
      look.day,
      look.due,
      look.overdue ? 'yes' : 'no',
      look.drainId,
      look.drainName,
      look.from,
      look.direction,
      along(look.toM),
      along(look.expectM[0]),
      along(look.expectM[1]),
      Math.round(100 * look.chance),
      look.known ? 'yes' : 'no',
      look.seen,
      look.segmentIds.join(' '),
      look.uid,
    ]),
  ]);
}
