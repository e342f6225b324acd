import type { Feature, Geometry } from 'geojson';
import type { GuessedMap } from '../columns/guess-map.js';
import { isMissing } from '../values/missing.js';
import { type IntakeReport, type Reason, Tally } from './intake-report.js';
import { placeNumber } from './place-number.js';
import { Placing } from './positions.js';
import { cellOf, type Format, type RawRow } from './raw-table.js';
import { SharedPositions } from './shared-positions.js';
import { DrainReader } from './take-drain.js';
import { TreeReader } from './take-tree.js';

/** Geometries of one part each; a line of many parts becomes as many lines. */
function partsOf(geometry: Geometry): Geometry[] {
  switch (geometry.type) {
    case 'MultiLineString':
      return geometry.coordinates.map((coordinates) => ({ type: 'LineString', coordinates }));
    case 'MultiPoint':
      return geometry.coordinates.map((coordinates) => ({ type: 'Point', coordinates }));
    default:
      return [geometry];
  }
}

/** A text of its own: a cell is a view of the piece of file that it came in, and would keep all of it in memory. */
const own = (id: string): string => `${id}\n`;

/** Turns the rows of one file into features of the site file, one after another, and counts what became of them. */
export class Taker {
  private readonly tally = new Tally();
  private readonly placing: Placing;
  private readonly trees: TreeReader;
  private readonly drains: DrainReader;
  /** Place of the first row with an id, by the id; not a number where the file gave none. */
  private readonly places = new Map<string, number>();
  /** Ids that were given anew, with the place that each came with. */
  private readonly renewed = new Set<string>();
  private readonly shared = new SharedPositions();
  private rows = 0;
  private taken = 0;
  private features = 0;

  /**
   * @param file name that the report speaks of.
   * @param format of the file.
   * @param guessed how its columns are read.
   */
  constructor(
    private readonly file: string,
    private readonly format: Format,
    private readonly guessed: GuessedMap,
  ) {
    this.placing = new Placing(guessed.map);
    this.trees = new TreeReader(guessed.map, this.tally);
    this.drains = new DrainReader(guessed.map, this.tally);
  }

  /**
   * Counts a row that could not be read at all.
   * @param why in plain words.
   */
  broken(why: string): void {
    this.rows += 1;
    this.tally.add('broken-row', this.rows, why);
  }

  private aside(reason: Reason, value: unknown): Feature[] {
    this.tally.add(reason, this.rows, value);
    return [];
  }

  /** An id that nothing in this file has; null where the same thing came twice. */
  private idOf(row: RawRow, geometry: Geometry): string | null {
    const use = this.guessed.map.columns.id;
    const given = use === undefined ? undefined : cellOf(row, use.column);
    // an id of 0 is an empty cell of a database
    if (isMissing(given) || given === 0 || given === '0') return this.claim(`row-${this.rows}`, Number.NaN);
    const id = String(given).trim();
    const place = placeNumber('coordinates' in geometry ? geometry.coordinates : null);
    const first = this.places.get(own(id));
    if (first === undefined) return this.claim(id, place);
    const also = `${id} ${place}`;
    if (first === place || this.renewed.has(also)) return null;
    this.renewed.add(also);
    this.tally.add('id-renewed', this.rows, id);
    return this.claim(`${id}-row-${this.rows}`, place);
  }

  private claim(id: string, place: number): string {
    this.places.set(own(id), place);
    return id;
  }

  /** Features of the next row: none where it was set aside, several where a line has several parts. */
  take(row: RawRow): Feature[] {
    this.rows += 1;
    const { what } = this.guessed.map;
    const gone = what === 'tree' ? this.trees.notAlive(row) : this.drains.notInUse(row);
    if (gone !== null) return this.aside(what === 'tree' ? 'not-alive' : 'not-in-use', gone);
    const placed = this.placing.place(row);
    if ('why' in placed) return this.aside(placed.why, placed.value);
    const wanted = what === 'tree' ? 'Point' : 'LineString';
    const parts = partsOf(placed.geometry).filter(({ type }) => type === wanted);
    if (parts.length === 0) return this.aside('wrong-geometry', placed.geometry.type);
    const id = this.idOf(row, placed.geometry);
    if (id === null) return this.aside('same-twice', this.guessed.map.columns.id?.column);
    const reader = what === 'tree' ? this.trees : this.drains;
    const properties = reader.properties(row, this.rows);
    if (parts.length > 1) this.tally.add('parts-split', this.rows, `${parts.length} parts`);
    this.taken += 1;
    this.features += parts.length;
    return parts.map((geometry, index) => {
      if (geometry.type === 'Point')
        this.shared.add(geometry.coordinates[0] ?? 0, geometry.coordinates[1] ?? 0);
      return {
        type: 'Feature',
        properties: { ...properties, id: parts.length > 1 ? `${id}-${index + 1}` : id },
        geometry,
      };
    });
  }

  /** What became of the rows so far. */
  report(): IntakeReport {
    const { count, examples } = this.shared.shared();
    this.tally.total('position-shared', count, examples);
    return {
      file: this.file,
      format: this.format,
      what: this.guessed.map.what,
      rows: this.rows,
      taken: this.taken,
      features: this.features,
      aside: this.rows - this.taken,
      guesses: this.guessed.guesses,
      entries: this.tally.entries(),
    };
  }
}
