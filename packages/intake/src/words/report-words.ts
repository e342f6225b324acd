import type { Guess } from '../columns/guess-map.js';
import { fate, type IntakeReport, type Reason, type ReportEntry } from '../take/intake-report.js';

const REASONS: Readonly<Record<Reason, string>> = {
  'broken-row': 'could not be read as a row',
  'no-position': 'no position: name its columns in a column map',
  'off-the-globe': 'the position is not on the globe',
  'grid-unknown': 'the position is on a grid that the file does not name: say which, such as EPSG:2263',
  'wrong-geometry': 'another kind of geometry than the rest',
  'not-alive': 'a stump, a dead tree or an empty place',
  'not-in-use': 'not in use: abandoned, removed or only planned',
  'same-twice': 'the same id at the same place again',
  'trunk-missing': 'no trunk size: taken from the crown or the usual size of its kind',
  'trunk-class': 'a size class: its middle was taken',
  'trunk-unreadable': 'a trunk size that is no number: taken as not measured',
  'trunk-odd': 'a trunk of more than 2 m: check it',
  'species-missing': 'no species: taken as a tree of unknown kind',
  'species-from-code': 'a species code: read as the first letters of the botanical name',
  'material-missing': 'no pipe material: taken as a middling pipe',
  'size-missing': 'no pipe size: only water cannot be worked out',
  'size-unreadable': 'a pipe size that is no number: taken as not given',
  'size-box': 'a box or an egg: the round pipe of the same area was taken',
  'date-unreadable': 'a date that is none: taken as not given',
  'parts-split': 'several parts in one line: read as so many lines',
  'id-renewed': 'an id that another one has: given a new one',
  'position-shared': 'stand exactly on one another: the position is of an address, not of the tree',
};

const FIELD_WORDS: Readonly<Record<Guess['what'], string>> = {
  kind: 'kind',
  position: 'position',
  id: 'id',
  genus: 'genus',
  species: 'species',
  common: 'common name',
  code: 'species code',
  trunk: 'trunk diameter',
  girth: 'trunk girth',
  canopyDiameter: 'crown width',
  canopyRadius: 'crown radius',
  height: 'height',
  condition: 'status',
  planted: 'planted',
  name: 'name',
  material: 'material',
  size: 'pipe size',
  installed: 'installed',
  depth: 'depth',
  carries: 'carries',
  street: 'street',
};

const FATES = { aside: 'set aside', assumed: 'assumed', note: 'note' } as const;

const many = (n: number, one: string): string => `${n.toLocaleString('en')} ${one}${n === 1 ? '' : 's'}`;

/** `266 rows set aside: a stump, a dead tree or an empty place (row 12: Stump)`. */
export function wordEntry({ reason, count, examples }: ReportEntry): string {
  const such = examples.length > 0 ? ` (${examples.join('; ')})` : '';
  return `${many(count, 'row')}, ${FATES[fate[reason]]}: ${REASONS[reason]}${such}`;
}

/** `trunk diameter: DBH_TRUNK in centimetres (one in twenty is above 78)`. */
export function wordGuess({ what, taken, why, sure }: Guess): string {
  return `${FIELD_WORDS[what]}: ${taken} (${why})${sure ? '' : '; not sure, check it'}`;
}

/** What was read, in one line. */
export function wordIntake({ file, format, what, rows, features, aside }: IntakeReport): string {
  const made = many(features, what === 'tree' ? 'tree' : 'line');
  return `${file} (${format}): ${many(rows, 'row')}, ${made} taken, ${aside.toLocaleString('en')} set aside`;
}
