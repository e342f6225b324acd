import type { PriceList, PriceRow, PriceUnit } from '../model/prices.js';
import { priceListOf } from './price-list-of.js';

const DATED = '2026-11-01';
const NOTE = 'Invented. Not market data: put in your own and clear this note.';

type Row = readonly [code: string, unit: PriceUnit, price: string, text: string];

const WORK: readonly Row[] = [
  ['set-up', 'job', '185.00', 'crew and machine to the site'],
  ['utility-locate', 'job', '0.00', 'locate request; the public service asks nothing'],
  ['crew-hours', 'hour', '112.00', 'crew of two'],
  ['digger-hours', 'hour', '44.00', 'small digger with fuel'],
  ['trench-shallow', 'yd3', '4.00', 'wear, on top of the hours'],
  ['trench-mid', 'yd3', '4.50', 'wear, on top of the hours'],
  ['trench-deep', 'yd3', '6.00', 'wear, on top of the hours'],
  ['trench-walled', 'yd3', '11.00', 'wear, on top of the hours'],
  ['trench-by-hand-shallow', 'yd3', '6.00', 'air tool hire, on top of the hours'],
  ['trench-by-hand-mid', 'yd3', '7.50', 'air tool hire, on top of the hours'],
  ['trench-by-hand-deep', 'yd3', '9.00', 'air tool hire, on top of the hours'],
  ['trench-by-hand-walled', 'yd3', '14.00', 'air tool hire, on top of the hours'],
  ['shoring', 'ft2', '5.20', 'box or sheets'],
  ['root-cutting', 'ft', '1.60', 'blades and sealing, on top of the hours'],
  ['backfill', 'yd3', '2.50', 'plate, on top of the hours'],
  ['spoil-away', 'yd3', '31.00', 'truck and tip'],
  ['old-pipe-out', 'ft', '1.70', 'skip and tip'],
  ['saw-cut', 'ft', '4.60', 'blade and water'],
  ['reinstate-lawn', 'ft2', '0.65', 'seed, soil and water, on top of the hours'],
  ['reinstate-bed', 'ft2', '1.35', 'mulch and lost plants, on top of the hours'],
  ['reinstate-gravel', 'ft2', '0.95', 'new gravel on top'],
  ['reinstate-paving', 'ft2', '12.50', 'base and paving'],
  ['reinstate-bare', 'ft2', '0.10', 'raked'],
  ['bore', 'ft', '21.00', 'mole with hose, on top of the hours'],
  ['bore-pit', 'piece', '95.00', 'pit dug and filled'],
];

const MATERIALS: readonly Row[] = [
  ['bedding-gravel', 'ton', '37.00', 'delivered'],
  ['bedding-sand', 'ton', '29.00', 'delivered'],
  ['drain-stone', 'ton', '43.00', 'washed, delivered'],
  ['fabric', 'yd2', '1.85', 'non-woven'],
  ['root-barrier', 'ft2', '3.90', 'sheet'],
  ['warning-tape', 'ft', '0.19', 'with wire'],
  ['basin', 'piece', '158.00', '12 in, with grate and sealed entries'],
];

const VISITS: readonly Row[] = [
  ['camera-look', 'job', '195.00', 'camera from the nearest way in, with notes'],
  ['clear-by-jet', 'job', '345.00', 'jet with a root nozzle, and a look'],
  ['clear-by-cutter', 'job', '430.00', 'cutter, and a look'],
  ['lining-set-up', 'job', '1750.00', 'lining crew to the site'],
  ['emergency-call', 'job', '540.00', 'stopped line cleared out of hours'],
  ['flood-clean-up', 'job', '900.00', 'what backed-up water does to a garden'],
  ['arborist-visit', 'job', '240.00', 'certified arborist on site'],
  ['fell-tree', 'ft', '680.00', 'felling and stump, by trunk diameter'],
];

/** Price of the pipe by the foot, and of what goes on it, by nominal inches. */
const SIZES = [3, 4, 6, 8] as const;
const SIZED: readonly (readonly [code: string, unit: PriceUnit, text: string, ...prices: string[]])[] = [
  ['pipe-hdpe-corrugated', 'ft', 'single-wall corrugated', '0.72', '0.94', '1.98', '3.70'],
  [
    'pipe-hdpe-corrugated-perforated',
    'ft',
    'single-wall corrugated, perforated',
    '0.76',
    '0.99',
    '2.06',
    '3.85',
  ],
  ['pipe-hdpe-corrugated-heavy', 'ft', 'heavy single-wall corrugated', '0.95', '1.22', '2.45', '4.60'],
  [
    'pipe-hdpe-corrugated-heavy-perforated',
    'ft',
    'heavy corrugated, perforated',
    '0.99',
    '1.28',
    '2.55',
    '4.75',
  ],
  ['pipe-hdpe-dual-wall', 'ft', 'dual-wall corrugated', '1.35', '1.75', '3.30', '5.60'],
  ['pipe-hdpe-dual-wall-perforated', 'ft', 'dual-wall, perforated', '1.40', '1.82', '3.45', '5.80'],
  ['pipe-hdpe-welded', 'ft', 'fused solid polyethylene', '3.60', '4.90', '9.80', '16.50'],
  ['pipe-pvc-sdr35', 'ft', 'gasketed sewer PVC', '1.70', '2.35', '4.95', '8.90'],
  ['pipe-pvc-sch40', 'ft', 'schedule 40 PVC', '2.90', '3.95', '7.20', '11.80'],
  ['pipe-pvc-thin-wall', 'ft', 'thin-wall PVC', '1.05', '1.38', '3.10', '6.20'],
  ['pipe-pvc-thin-wall-perforated', 'ft', 'thin-wall PVC, perforated', '1.10', '1.45', '3.20', '6.40'],
  ['pipe-abs', 'ft', 'ABS', '3.10', '4.30', '8.20', '13.90'],
  ['pipe-clay', 'ft', 'clay', '5.20', '6.40', '9.90', '14.50'],
  ['pipe-concrete', 'ft', 'concrete', '6.10', '6.90', '9.20', '13.00'],
  ['pipe-cast-iron', 'ft', 'cast iron', '12.40', '16.80', '29.00', '47.00'],
  ['joint-coupling', 'piece', 'coupling between pieces', '2.90', '3.80', '7.90', '14.50'],
  ['wye', 'piece', 'wye', '8.20', '11.40', '26.00', '58.00'],
  ['tee', 'piece', 'tee', '7.60', '10.60', '24.00', '54.00'],
  ['bend', 'piece', 'bend', '5.10', '6.90', '17.50', '39.00'],
  ['coupling', 'piece', 'banded coupling, new pipe to old', '12.50', '15.00', '24.00', '37.00'],
  ['reducer', 'piece', 'reducer', '6.20', '8.10', '18.00', '36.00'],
  ['cleanout', 'piece', 'cleanout with riser', '31.00', '38.00', '72.00', '120.00'],
  ['downspout', 'piece', 'downspout adapter', '7.50', '9.20', '21.00', '40.00'],
  ['outlet', 'piece', 'outlet with grate', '18.00', '24.00', '46.00', '78.00'],
  ['cap', 'piece', 'cap', '4.10', '5.30', '11.00', '21.00'],
  ['lining', 'ft', 'lining cured in place', '78.00', '88.00', '104.00', '128.00'],
];

const rowOf = ([code, unit, price, text]: Row): PriceRow => ({
  code,
  text,
  unit,
  price,
  dated: DATED,
  note: NOTE,
});

const sized: readonly Row[] = SIZED.flatMap(([code, unit, text, ...prices]) =>
  SIZES.map((inches, i): Row => [`${code}-${inches}in`, unit, prices[i] as string, `${inches} in ${text}`]),
);

/**
 * A price list to try things out with: invented by us on the date it bears, in US dollars and US units. It is no
 * market data; a firm puts in its own.
 */
export const demoPrices = (): PriceList =>
  priceListOf('USD', [...WORK, ...VISITS, ...MATERIALS, ...sized].map(rowOf));
