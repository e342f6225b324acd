import { describe, expect, it } from 'vitest';
import { clockOf } from '../../../packages/core/src/risk/clock.js';
import { horizonOf } from '../../../packages/core/src/risk/horizon.js';
import { pipeRow } from '../../../packages/core/src/tables/pipes.js';

const NOW = 2026.5;
const horizon = horizonOf(10);
const clay = pipeRow('clay');

const clock = (drain: { installedYear?: number; dugYear?: number; cutYear?: number }) =>
  clockOf(
    {
      installedYear: drain.installedYear ?? null,
      dugYear: drain.dugYear ?? null,
      cutYear: drain.cutYear ?? null,
    },
    clay,
    NOW,
    horizon,
  );

const firstAhead = horizon.yearsAhead[0] as number;

describe('the clock of a line', () => {
  it('counts from the year it was laid', () => {
    const laid = clock({ installedYear: 2006.5 });
    expect(laid).toMatchObject({ ageKnown: true, ageYears: 20, sinceCut: null });
    expect(laid.sinceDug[0]).toBeCloseTo(20 + firstAhead, 9);
  });

  it('counts anew from a later digging but not from one before it was laid', () => {
    expect(clock({ installedYear: 2006.5, dugYear: 2024.5 }).sinceDug[0]).toBeCloseTo(2 + firstAhead, 9);
    expect(clock({ installedYear: 2006.5, dugYear: 1990 }).sinceDug[0]).toBeCloseTo(20 + firstAhead, 9);
  });

  it('ages on through a digging: the pipe is not new', () => {
    expect(clock({ installedYear: 2006.5, dugYear: 2024.5 }).ageFactor).toEqual(
      clock({ installedYear: 2006.5 }).ageFactor,
    );
  });

  it('takes the usual age of its material where the year is not known, and says so', () => {
    expect(clock({})).toMatchObject({ ageKnown: false, ageYears: clay.assumedAgeYears.value });
  });

  it('runs a clock of its own for a cut inside, where nothing was dug since', () => {
    expect(clock({ installedYear: 2006.5, cutYear: 2025.5 }).sinceCut?.[0]).toBeCloseTo(1 + firstAhead, 9);
    expect(clock({ installedYear: 2006.5, cutYear: 2020, dugYear: 2024 }).sinceCut).toBeNull();
    expect(clock({ installedYear: 2006.5, cutYear: 2000 }).sinceCut).toBeNull();
  });

  it('is at nothing until a line that is only planned lies in the ground', () => {
    const planned = clock({ installedYear: 2030.5 });
    expect(planned.ageYears).toBe(0);
    expect(planned.sinceDug[0]).toBe(0);
    expect(planned.sinceDug[3]).toBeCloseTo((horizon.yearsAhead[3] as number) - 4, 9);
  });

  it('lets the age factor grow by a fiftieth a year and no further than to two', () => {
    const young = clock({ installedYear: NOW });
    young.ageFactor.forEach((factor, k) => {
      expect(factor).toBeCloseTo(1 + (horizon.yearsAhead[k] as number) / 50, 9);
    });
    expect(clock({ installedYear: 1900 }).ageFactor).toEqual([2, 2, 2, 2]);
  });
});
