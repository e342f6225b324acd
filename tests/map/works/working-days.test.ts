import { describe, expect, it } from 'vitest';
import { workingDays } from '../../../apps/map/src/works/working-days.js';

describe('working days', () => {
  // 2026-11-27 is a Friday (ISO 8601 week 48, day 5)
  it('pass over Saturday and Sunday', () => {
    expect(workingDays('2026-11-27', 3)).toEqual(['2026-11-27', '2026-11-30', '2026-12-01']);
  });

  it('begin on Monday where the first day is no working day', () => {
    expect(workingDays('2026-11-28', 1)).toEqual(['2026-11-30']);
  });

  it('are none for a day that is no date', () => {
    expect(workingDays('soon', 3)).toEqual([]);
  });
});
