import { planeAt, xOf, yOf } from '../geometry/plane.js';
import { nearestOn, sliceOf } from '../geometry/polyline.js';
import { coordinatesOf, type LineModel } from '../line/line-model.js';
import type { Band, TreeZones } from '../model/result.js';
import type { LonLat } from '../model/site.js';
import type { LineDetail, ScoredSite } from './scored-site.js';
import { segmentId } from './segment-result.js';
import { zonesOfTree } from './tree-zones.js';

/** A box in degrees. */
export type Box = readonly [west: number, south: number, east: number, north: number];

/** One segment for drawing. */
export interface Stretch {
  readonly id: string;
  readonly band: Band;
  readonly coordinates: readonly (readonly number[])[];
}

/** Bands from the one drawn over all others: what hides the others where there is no room for all. */
const WORST_FIRST: readonly Band[] = ['act', 'inspect', 'watch', 'cannot-say', 'leave'];

/** What of a scored site lies in view, and what lies at a place: for drawing nets too large to hold line by line. */
export class SiteView {
  /** Worst band of each line, as a number into `WORST_FIRST`. */
  private readonly worst: Uint8Array;
  /** First row of each line; one more at the end. */
  private readonly firstRow: Int32Array;
  private readonly numberOf: ReadonlyMap<string, number>;
  /** Box of all trees and lines. */
  readonly bounds: Box;

  /** @param scored the site to be looked at. */
  constructor(private readonly scored: ScoredSite) {
    const { columns, site } = scored;
    const count = site.drains.length;
    this.worst = new Uint8Array(count).fill(WORST_FIRST.length - 1);
    this.firstRow = new Int32Array(count + 1);
    for (let row = 0; row < columns.count; row++) {
      const line = columns.line[row] as number;
      this.worst[line] = Math.min(this.worst[line] as number, WORST_FIRST.indexOf(scored.bandOf(row)));
      this.firstRow[line + 1] = row + 1;
    }
    // a line without a segment begins where the one before it ends
    for (let line = 0; line < count; line++) {
      this.firstRow[line + 1] = Math.max(this.firstRow[line + 1] as number, this.firstRow[line] as number);
    }
    this.numberOf = new Map(site.drains.map((drain, i) => [drain.id, i]));
    this.bounds = boundsOf(scored);
  }

  /** Numbers of the lines that may lie in a box of degrees. */
  linesIn([west, south, east, north]: Box): readonly number[] {
    return this.scored.context.lines.net.index.search(west, south, east, north);
  }

  /** Worst band of a line's segments, by the line's number. */
  worstOf(line: number): Band {
    return WORST_FIRST[this.worst[line] as number] as Band;
  }

  /** Places of a line, by its number, as drawn. */
  pathOf(line: number): readonly LonLat[] {
    return this.scored.site.drains[line]?.path ?? [];
  }

  /** The segments of a line, by its number, from its outlet end. */
  stretchesOf(line: number): Stretch[] {
    const model = this.scored.context.lines.at(line);
    const first = this.firstRow[line] as number;
    return model.segments.map(({ fromM, toM }, i) => ({
      id: segmentId(model.drain.id, i),
      band: this.scored.bandOf(first + i),
      coordinates: coordinatesOf(model, sliceOf(model.polyline, fromM, toM)),
    }));
  }

  /**
   * Trees whose roots may come into a box.
   * @param box degrees.
   * @param most no more trees than this.
   */
  treesIn([west, south, east, north]: Box, most: number): TreeZones[] {
    const { context } = this.scored;
    const found = context.field.index.search(west, south, east, north);
    return found.slice(0, most).map((i) => zonesOfTree(context, i));
  }

  /**
   * The segment nearest to a place.
   * @param place longitude and latitude, degrees.
   * @param withinM no further away than this.
   * @returns its id; null where none is as near.
   */
  nearest([lon, lat]: LonLat, withinM: number): string | null {
    const { context } = this.scored;
    const { metresPerDegreeLon, metresPerDegreeLat } = planeAt(lon, lat);
    const wide = withinM / metresPerDegreeLon;
    const reach = withinM / metresPerDegreeLat;
    let best = withinM;
    let found: string | null = null;
    for (const line of this.linesIn([lon - wide, lat - reach, lon + wide, lat + reach])) {
      const model = context.lines.at(line);
      const at = nearestOn(model.polyline, xOf(model.plane, lon), yOf(model.plane, lat));
      if (at.distance > best) continue;
      best = at.distance;
      found = segmentId(model.drain.id, segmentAt(model, at.station));
    }
    return found;
  }

  /**
   * A segment with those beside it on its line, in full.
   * @param id `main/4`, as in a result.
   * @param beside how many on either side.
   * @returns null where there is none of this id.
   */
  around(id: string, beside: number): LineDetail | null {
    const slash = id.lastIndexOf('/');
    const line = this.numberOf.get(id.slice(0, slash));
    return line === undefined ? null : this.scored.around(line, Number(id.slice(slash + 1)) - 1, beside);
  }
}

function segmentAt({ segments }: LineModel, station: number): number {
  const found = segments.findIndex(({ toM }) => station <= toM);
  return found < 0 ? segments.length - 1 : found;
}

function boundsOf({ site }: ScoredSite): Box {
  const box: [number, number, number, number] = [180, 90, -180, -90];
  const take = ([lon, lat]: LonLat): void => {
    if (lon < box[0]) box[0] = lon;
    if (lat < box[1]) box[1] = lat;
    if (lon > box[2]) box[2] = lon;
    if (lat > box[3]) box[3] = lat;
  };
  for (const { path } of site.drains) path.forEach(take);
  for (const { position } of site.trees) take(position);
  return box;
}
