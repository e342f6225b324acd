import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { rank } from '../../packages/core/src/risk/rank.js';
import { jointRow } from '../../packages/core/src/tables/joints.js';
import type { JointKey, MaterialKey } from '../../packages/core/src/tables/pipe-row.js';
import { pipeRow } from '../../packages/core/src/tables/pipes.js';
import { scene } from '../scenes/scene.js';

/**
 * California state water board, table of sewage spills from private laterals, regions 1, 2, 3 and 5, spills from
 * 2007 to May 2017: spills where the material was recorded, and those put down to roots. Shares of spills and not
 * rates: a lateral that seldom spills at all may still spill by roots when it does. They can rank materials, no more.
 */
const SPILLS = {
  clay: { root: 69, total: 189, typicalAgeYears: 50 },
  plastic: { root: 25, total: 143, typicalAgeYears: 15 },
  iron: { root: 5, total: 43, typicalAgeYears: 40 },
} as const;
type MaterialClass = keyof typeof SPILLS;

const folder = join(process.env['ROOTREACH_OPEN_DATA'] ?? '', 'california-lateral-spill-causes-north');
const file = join(folder, 'cause_counts.csv');
const hasFile = process.env['ROOTREACH_OPEN_DATA'] !== undefined && existsSync(file);

interface Count {
  readonly material: string;
  readonly band: string;
  readonly root: number;
  readonly total: number;
}

function countsOf(csv: string): Count[] {
  const [header, ...rows] = csv.trim().split(/\r?\n/);
  const columns = (header as string).split(',');
  return rows.map((row) => {
    const cells = row.split(',');
    const cell = (name: string): string => cells[columns.indexOf(name)] ?? '';
    const [root, total] = [Number(cell('root')), Number(cell('total'))];
    return { material: cell('material_class'), band: cell('age_band_years'), root, total };
  });
}

/** Middle of an age band, years. */
const MIDDLE: Readonly<Record<string, number>> = { '1-20': 10, '21-40': 30, '41-60': 50, '61-150': 80 };

/** Root entries a year of a house lateral of 12 m, 0.9 m deep, that passes a grown street tree at 3 m. */
function entriesPerYear(material: MaterialKey, ageYears: number, joint?: JointKey): number {
  const lateral = scene([-122, 38])
    .drain({
      path: [
        [0, 0],
        [12, 0],
      ],
      flow: 'as-drawn',
      material,
      ...(joint === undefined ? {} : { joint }),
      size_mm: 100,
      depth_start_m: 0.9,
      depth_end_m: 0.9,
      carries: 'foul',
      installed: 2017 - ageYears,
    })
    .tree({ at: [6, 3], species: 'Liquidambar styraciflua', dbh_cm: 45 });
  const { segments } = rank(lateral.site(), { asOf: '2017-05-15', horizonYears: 1 });
  return segments.reduce((sum, s) => sum + s.expectedEntries.joints + s.expectedEntries.slots, 0);
}

const share = (material: MaterialClass): number => SPILLS[material].root / SPILLS[material].total;

const ours = {
  clay: entriesPerYear('clay', SPILLS.clay.typicalAgeYears),
  'sewer-grade plastic': entriesPerYear('pvc-sdr35', SPILLS.plastic.typicalAgeYears),
  'schedule 40 plastic': entriesPerYear('pvc-sch40', SPILLS.plastic.typicalAgeYears),
  ABS: entriesPerYear('abs', SPILLS.plastic.typicalAgeYears),
  iron: entriesPerYear('cast-iron', SPILLS.iron.typicalAgeYears),
};

describe('spills from house laterals by material and cause (northern and central California)', () => {
  it('have the shares that are quoted here', () => {
    expect(share('clay')).toBeCloseTo(0.37, 2);
    expect(share('plastic')).toBeCloseTo(0.17, 2);
    expect(share('iron')).toBeCloseTo(0.12, 2);
    if (!hasFile) return;
    const counts = countsOf(readFileSync(file, 'utf8'));
    for (const material of Object.keys(SPILLS) as MaterialClass[]) {
      const { root, total, typicalAgeYears } = SPILLS[material];
      const rows = counts.filter((c) => c.material === material);
      expect(rows.reduce((sum, c) => sum + c.root, 0)).toBe(root);
      expect(rows.reduce((sum, c) => sum + c.total, 0)).toBe(total);
      const aged = rows.filter((c) => MIDDLE[c.band] !== undefined);
      const mean =
        aged.reduce((sum, c) => sum + c.total * (MIDDLE[c.band] as number), 0) /
        aged.reduce((sum, c) => sum + c.total, 0);
      expect(Math.abs(mean - typicalAgeYears)).toBeLessThan(8);
    }
  });

  it('have the lesser shares so apart that clay stands first, and plastic and iron cannot be told apart', () => {
    // two shares against their standard error
    const deviations = (a: MaterialClass, b: MaterialClass): number => {
      const both = (SPILLS[a].root + SPILLS[b].root) / (SPILLS[a].total + SPILLS[b].total);
      const error = Math.sqrt(both * (1 - both) * (1 / SPILLS[a].total + 1 / SPILLS[b].total));
      return (share(a) - share(b)) / error;
    };
    expect(deviations('clay', 'plastic')).toBeGreaterThan(3);
    expect(deviations('clay', 'iron')).toBeGreaterThan(3);
    expect(Math.abs(deviations('plastic', 'iron'))).toBeLessThan(1.5);
  });

  it('agree with our tables in that clay stands first by far', () => {
    const rows = Object.entries(ours).map(([name, rate]) => `${name} ${(rate / ours.clay).toFixed(3)}`);
    console.info(
      `entries a year beside a street tree against clay (${ours.clay.toFixed(4)}): ${rows.join(', ')}`,
    );
    for (const [name, rate] of Object.entries(ours)) {
      if (name !== 'clay') expect(rate).toBeLessThan(0.5 * ours.clay);
    }
  });

  // The shares have plastic above iron, though not by more than chance may do; our table has iron above plastic: joints
  // every 5 ft under a band (0.4) and forty years old, against a gasket every 14 ft or a weld every 10 and fifteen years
  // old. Iron spills that much more by rust and breaks (17 of 43 structural) also lowers its share without lowering
  // its rate. Not bent to fit: this says how things stand.
  it('do not agree with our tables on plastic and iron, where iron stands higher', () => {
    expect(ours.iron).toBeGreaterThan(ours['sewer-grade plastic']);
    expect(ours.iron).toBeGreaterThan(ours['schedule 40 plastic']);
    expect(ours['sewer-grade plastic']).toBeGreaterThan(ours.ABS);
  });

  it('would have iron nearer to plastic were its joints taken as tight as a gasketed bell', () => {
    const tight = entriesPerYear('cast-iron', SPILLS.iron.typicalAgeYears, 'gasket');
    console.info(`iron with the openness of a gasket: ${(tight / ours.clay).toFixed(3)} of clay`);
    expect(tight / ours.iron).toBeCloseTo(jointRow('gasket').factor.value / jointRow('band').factor.value, 6);
    expect(tight).toBeGreaterThan(ours['sewer-grade plastic']);
    expect(pipeRow('cast-iron').joint).toBe('band');
  });
});
