import type { LonLat, Tree, Units } from '../model/site.js';
import type { SpeciesMatch } from '../model/species-match.js';
import { combinedStemDiameter } from '../roots/combined-stem.js';
import { fromCentimetres, fromInches } from '../units/length.js';
import { bareTrunkColumn, commonNameColumn, type Properties, speciesColumn } from './columns.js';
import type { PropertyReader } from './property-reader.js';
import { quantities } from './quantity-names.js';

/** Trunks wider than this are worth a second look; above the next they are taken as not given (judgement). */
const ODD_STEM_M = 2;
const IMPOSSIBLE_STEM_M = 4;

export type Resolve = (text: string | null) => SpeciesMatch;

/** Trunk from diameter, girth or several stems, whichever is given. */
function stemOf(reader: PropertyReader, properties: Properties, units: Units | null): number | null {
  const measured =
    reader.quantity(quantities.dbh) ??
    divided(reader.quantity(quantities.girth)) ??
    reader.list(quantities.stems, combinedStemDiameter) ??
    bareTrunk(reader, properties, units);
  if (measured === null || measured <= 0) return null;
  if (measured <= ODD_STEM_M) return measured;
  reader.report('warning', { code: 'odd-diameter', diameterM: measured }, 'properties');
  return measured > IMPOSSIBLE_STEM_M ? null : measured;
}

const divided = (girthM: number | null): number | null => (girthM === null ? null : girthM / Math.PI);

function bareTrunk(reader: PropertyReader, properties: Properties, units: Units | null): number | null {
  const column = bareTrunkColumn(properties);
  const value = column === null ? undefined : properties[column];
  if (column === null || typeof value !== 'number' || value <= 0) return null;
  const inches = units === 'us';
  reader.report(
    'notice',
    { code: 'unit-guessed', column, unit: inches ? 'inches' : 'centimetres' },
    `properties.${column}`,
  );
  return inches ? fromInches(value) : fromCentimetres(value);
}

function textOf(properties: Properties, column: string | null): string | null {
  const value = column === null ? undefined : properties[column];
  return typeof value === 'string' ? value : null;
}

function speciesOf(reader: PropertyReader, properties: Properties, resolve: Resolve): SpeciesMatch {
  const column = speciesColumn(properties);
  const botanical = textOf(properties, column);
  let match = resolve(botanical);
  let common: string | null = null;
  if (match.level === 'unknown') {
    common = textOf(properties, commonNameColumn(properties));
    if (common !== null) match = resolve(common);
  }
  const path = `properties.${column ?? 'species'}`;
  const text = botanical ?? common;
  if (text !== null && match.level === 'unknown') {
    reader.report('warning', { code: 'species-unknown', text }, path);
  } else if (text !== null && match.certainty !== 'exact') {
    reader.report('notice', { code: 'species-uncertain', text, taken: match.key }, path);
  }
  return match;
}

/** A tree from its checked properties, or null where it is no live tree. */
export function buildTree(
  id: string,
  position: LonLat,
  properties: Properties,
  reader: PropertyReader,
  resolve: Resolve,
  isGone: (text: string) => boolean,
  units: Units | null,
): Tree | null {
  const named =
    textOf(properties, speciesColumn(properties)) ?? textOf(properties, commonNameColumn(properties));
  const status = reader.text('condition');
  const gone = [status, named].find((text) => text !== null && isGone(text));
  const felledYear = reader.year('felled');
  if (gone !== undefined && gone !== null && felledYear === null) {
    reader.report('warning', { code: 'not-a-live-tree', text: gone }, 'properties');
    return null;
  }
  const street = reader.text('street');
  return {
    id,
    position,
    species: speciesOf(reader, properties, resolve),
    stemDiameterM: stemOf(reader, properties, units),
    canopyRadiusM: reader.quantity(quantities.canopyRadius),
    heightM: reader.quantity(quantities.height),
    plantedYear: reader.year('planted'),
    felledYear,
    condition: status,
    note: reader.text('note'),
    ...(street === null ? {} : { street }),
  };
}
