import type { Seen } from '../model/site.js';
import type { WorkAssumption } from '../model/works.js';
import type { HowKnown } from '../sources/how-known.js';
import { judgement } from '../tables/judgement.js';

interface Row {
  readonly value: number;
  readonly unit: string;
  readonly why: string;
  readonly known: HowKnown;
  readonly least: number;
  readonly most: number;
}

const row = (value: number, unit: string, why: string, most: number, least = 0): Row => ({
  value,
  unit,
  why,
  known: 'judgement',
  least,
  most,
});

/** What the choice between repairs rests on beside the model and the prices. Each may be set. */
const rows = {
  'horizon-years': row(25, 'years', 'about as long as an owner keeps a house', 50, 1),
  'discount-rate': row(0.04, 'a year', 'money later is worth less than money now', 0.3),
  'stoppages-full': row(1, 'a year', 'a line full of roots backs up in any heavy rain', 12),
  'stoppages-crushed': row(1, 'a year', 'as a full one', 12),
  'stoppages-mass': row(0.5, 'a year', 'a root mass catches what comes down', 12),
  'stoppages-offset': row(0.15, 'a year', 'an offset joint catches some', 12),
  'stoppages-sag': row(0.1, 'a year', 'a sag silts up', 12),
  'stoppages-fine': row(0.12, 'a year', 'fine roots thicken within some years', 12),
  'entry-stops-share': row(0.5, 'share', 'of new entries become a stoppage before a camera finds them', 1),
  'stoppages-between-clearings': row(0.1, 'share', 'of the spells between clearings end in a stoppage', 1),
  'clearing-years': row(
    judgement.cutClockYears.value * Math.sqrt(Math.LN2),
    'years',
    'half of the roots cut inside are back: removal every one to two years is common',
    20,
    0.25,
  ),
  'look-target-chance': row(
    judgement.nextLook.value.targetChance,
    'chance',
    judgement.nextLook.why,
    0.9,
    0.01,
  ),
  'spot-length-m': row(3, 'm', 'one stick: what a crew digs as one hole', 10, 1),
  'hand-dig-diameters': row(6, 'trunk diameters', 'nearer to a stem no bucket goes in the ground', 20, 3),
  'barrier-off-pipe-m': row(
    0.6,
    'm',
    'from the pipe to the barrier, so that neither trench falls in',
    3,
    0.2,
  ),
  'barrier-below-pipe-m': row(0.3, 'm', 'a foot below the bottom of the pipe', 1),
  'basin-share-of-hole-m': row(1.2, 'm', 'hole to set a basin in, along the line', 4, 0.6),
} as const satisfies Record<string, Row>;

export type AssumptionKey = keyof typeof rows;
export type Assumed = Readonly<Record<AssumptionKey, number>>;

const keys = Object.keys(rows) as AssumptionKey[];

/** The numbers to work with. @throws RangeError for one that makes no sense. */
export function assumedWith(given: Partial<Assumed>): Assumed {
  const unknown = Object.keys(given).find((key) => !(key in rows));
  if (unknown !== undefined) throw new RangeError(`there is no assumption '${unknown}': ${keys.join(', ')}`);
  const entries = keys.map((key) => {
    const { value, least, most } = rows[key];
    const chosen = given[key] ?? value;
    if (!(chosen >= least && chosen <= most)) {
      throw new RangeError(`${key} must lie from ${least} to ${most}, got ${chosen}`);
    }
    return [key, chosen] as const;
  });
  return Object.fromEntries(entries) as Assumed;
}

/** All of them as they are listed beside a result. */
export const listAssumptions = (assumed: Assumed, given: Partial<Assumed>): WorkAssumption[] =>
  keys.map((key) => {
    const { unit, why, known } = rows[key];
    return { key, value: assumed[key], unit, why, known, given: given[key] !== undefined };
  });

/** Stoppages a year from what was seen and is left. */
export const stoppagesFrom = (seen: Seen, assumed: Assumed): number =>
  seen === 'clear' ? 0 : assumed[`stoppages-${seen}`];
