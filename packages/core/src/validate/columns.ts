import type { FeatureKind } from './schemas.js';

/** Properties as they stand in the file. */
export type Properties = Readonly<Record<string, unknown>>;

/** Names of columns in public tree inventories, lower case, for features that do not say their kind. */
const SPECIES_COLUMNS = [
  'species',
  'botanical',
  'botanical_name',
  'scientific_name',
  'scientificname',
  'spc_latin',
  'latin_name',
  'genus_species',
];
const COMMON_COLUMNS = ['common', 'common_name', 'commonname', 'spc_common'];
const TRUNK_COLUMNS = [
  'dbh',
  'dbh_trunk',
  'tree_dbh',
  'trunk_diameter',
  'trunk_diam',
  'diameter',
  'stem_diameter',
];
const TRUNK_WITH_UNIT = [
  'dbh_cm',
  'dbh_in',
  'dbh_m',
  'girth_cm',
  'girth_in',
  'girth_m',
  'stems_cm',
  'stems_in',
];

function columnNamed(properties: Properties, names: readonly string[]): string | null {
  for (const key in properties) if (names.includes(key.toLowerCase())) return key;
  return null;
}

/** The name of the site file first: a town has a million trees, and most files say it. */
export function speciesColumn(p: Properties): string | null {
  return p['species'] === undefined ? columnNamed(p, SPECIES_COLUMNS) : 'species';
}

export const commonNameColumn = (p: Properties): string | null => columnNamed(p, COMMON_COLUMNS);
/** A trunk column that names no unit. */
export const bareTrunkColumn = (p: Properties): string | null => columnNamed(p, TRUNK_COLUMNS);

/**
 * Kind of a feature that does not say it: a point with a tree's columns, or a line.
 * @param geometryType as GeoJSON names it.
 * @param properties of the feature.
 * @returns null where nothing tells.
 */
export function guessKind(geometryType: string, properties: Properties): FeatureKind | null {
  if (geometryType === 'LineString') return 'drain';
  if (geometryType !== 'Point') return null;
  const isTree =
    speciesColumn(properties) !== null ||
    commonNameColumn(properties) !== null ||
    bareTrunkColumn(properties) !== null ||
    columnNamed(properties, TRUNK_WITH_UNIT) !== null;
  return isTree ? 'tree' : null;
}
