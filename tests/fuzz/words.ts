import type { Chance } from './chance.js';
import { NOT_NUMBERS, NUMBERS, TEXTS, WORDS } from './hostile.js';

/** Values that make sense for an option, which are likelier to lead further. */
const SENSE: Readonly<Record<string, readonly string[]>> = {
  years: ['0.5', '1', '10', '100', '3.7'],
  'segment-m': ['0.3', '1', '3', '1000'],
  top: ['1', '2', '1000000000'],
  units: ['us', 'metric'],
  'as-of': ['2026', '2026-11-25', '1900', '0001', '9999-12-31', '1962-01-01', '2024-05-02'],
  segment: ['main/1', 'main/2', 'main/999', 'side/1'],
  line: ['main', 'side'],
  between: ['0,5', '3,4', '0,1e9', '0.0001,0.0002', '5,3'],
  from: ['B1', 'L1', 'main', '-70.6,40.5', '0,0', '181,91'],
  to: ['O1', 'L2', 'main', '-70.59990,40.50003', '-70.6,40.5001'],
  via: ['-70.5999,40.5001', '0,0'],
  pipe: ['sdr35', 'corrugated', 'clay', 'brick'],
  'size-mm': ['100', '1', '1000000'],
  'size-in': ['4', '6', '0.0001'],
  fall: ['1', '0', '100', '0.01'],
  cover: ['12in', '0.0001m', '10m', '45 cm'],
  'max-depth': ['4ft', '0.01m', '10m'],
  'rain-mm-h': ['100', '0', '1e6', '0.0001'],
  'rain-in-h': ['4.2', '1e9'],
  slope: ['1', '0', '100', '1e-9'],
  surface: ['roof', 'lawn'],
  margin: ['15', '0', '100', '1e9'],
  tax: ['8.25', '100'],
  'tax-on': ['all', 'materials'],
  horizon: ['25', '1', '100'],
  discount: ['4', '0', '100'],
  budget: ['4000', '0', '0.01', '1e15'],
  'most-chance': ['10', '0', '100'],
  assume: ['stoppages-fine=0.3', 'stoppages-fine=1e9', '__proto__=1', 'constructor=2'],
  choices: ['replace-heavier', 'spot-repair,leave', '__proto__'],
  choice: ['replace-heavier', 'spot-repair', 'constructor'],
  lang: ['en', 'es'],
  by: ['our firm'],
  until: ['2028-06', '2027', '9999-12'],
  days: ['2027-04-05..2027-04-16', '2027-04-05', '2027-04-05..2027-04-01', '0001-01-01..9999-12-31'],
  'looks-a-day': ['1', '6', '100'],
  threads: ['0'],
  'square-m': ['20', '500', '100000'],
  crs: ['EPSG:2263', 'EPSG:4326', 'EPSG:3857', '+proj=utm +zone=18', 'EPSG:0'],
};

/** Options each command knows that name no file and lead to none. */
const OPTIONS: Readonly<Record<string, readonly string[]>> = {
  check: ['as-of', 'units', 'crs'],
  rank: ['top', 'years', 'segment-m', 'as-of', 'units'],
  explain: ['segment', 'years', 'segment-m', 'as-of', 'units'],
  water: ['rain-mm-h', 'rain-in-h', 'slope', 'surface', 'as-of', 'units'],
  season: ['until', 'days', 'looks-a-day', 'years', 'segment-m', 'as-of', 'units'],
  learn: ['as-of', 'units'],
  town: ['top', 'square-m', 'years', 'segment-m', 'as-of', 'units'],
  route: ['from', 'to', 'via', 'pipe', 'size-mm', 'size-in', 'fall', 'cover', 'max-depth', 'as-of', 'units'],
  decide: [
    'line',
    'segment',
    'between',
    'margin',
    'tax',
    'tax-on',
    'horizon',
    'discount',
    'budget',
    'most-chance',
    'assume',
    'segment-m',
    'as-of',
    'units',
  ],
  quote: ['line', 'segment', 'between', 'choices', 'margin', 'tax', 'tax-on', 'as-of', 'units'],
  page: ['segment', 'choice', 'lang', 'by', 'years', 'segment-m', 'as-of', 'units'],
  convert: ['crs'],
};

/** Some options of a command; one in four values is of no sense. */
export function anyOptions(command: string, chance: Chance, most = 2): string[] {
  const known = OPTIONS[command] ?? [];
  const words: string[] = [];
  for (let left = chance.below(most + 1); left > 0 && known.length > 0; left--) {
    const name = chance.pick(known);
    const sense = SENSE[name] ?? [];
    const value =
      sense.length > 0 && chance.happens(0.75)
        ? chance.pick(sense)
        : chance.pick(chance.pick([NUMBERS, TEXTS, WORDS, NOT_NUMBERS]));
    words.push(`--${name}=${value}`);
  }
  return words;
}
