import { sliceOf } from '../geometry/polyline.js';
import { coordinatesOf, depthAt, type LineModel } from '../line/line-model.js';
import type { Drain, Finding, Fitting, LonLat, Site } from '../model/site.js';
import { HAIR_M } from '../risk/known.js';
import type { SeenContext } from '../risk/seen-context.js';

/** A rest shorter than this goes with the stretch: nobody leaves a hand's breadth of old pipe, metres (judgement). */
export const SHORTEST_REST_M = 0.3;

/** A whole line or a part of one, by stations from the outlet end of the line it was cut from. */
export interface Piece {
  readonly id: string;
  readonly fromM: number;
  readonly toM: number;
  readonly isStretch: boolean;
}

/** A site in which a stretch is a line of its own. */
export interface SplitSite {
  readonly site: Site;
  /** What the line is cut into, from its outlet end up; the stretch may take in a hand's breadth that was left. */
  readonly pieces: readonly Piece[];
  readonly stretch: Piece;
}

function piecesOf(line: LineModel, fromM: number, toM: number): Piece[] {
  const { id } = line.drain;
  const from = fromM < SHORTEST_REST_M ? 0 : fromM;
  const to = line.lengthM - toM < SHORTEST_REST_M ? line.lengthM : toM;
  const whole = from === 0 && to === line.lengthM;
  const pieces: Piece[] = [];
  if (from > 0) pieces.push({ id: `${id} below`, fromM: 0, toM: from, isStretch: false });
  pieces.push({ id: whole ? id : `${id} renewed`, fromM: from, toM: to, isStretch: true });
  if (to < line.lengthM) pieces.push({ id: `${id} above`, fromM: to, toM: line.lengthM, isStretch: false });
  return pieces;
}

/** A piece as a drain of its own, from its upper end down. */
function drainOf(line: LineModel, { id, fromM, toM }: Piece): Drain {
  const path = coordinatesOf(line, sliceOf(line.polyline, fromM, toM)).reverse() as unknown as LonLat[];
  const depths = line.depthKnown
    ? { depthStartM: depthAt(line, toM), depthEndM: depthAt(line, fromM) }
    : { depthStartM: null, depthEndM: null };
  return { ...line.drain, id, path, flow: 'as-drawn', ...depths };
}

/** Fittings that the line owns by name go to the piece they lie on, at a border to the stretch. */
function fittingsOf(site: Site, line: LineModel, pieces: readonly Piece[]): Fitting[] {
  const stations = new Map(line.fittings.map(({ id, stationM }) => [id, stationM]));
  const ordered = [...pieces].sort((a, b) => Number(b.isStretch) - Number(a.isStretch));
  return site.fittings.map((fitting) => {
    if (fitting.drain !== line.drain.id) return fitting;
    const at = stations.get(fitting.id) ?? 0;
    const piece = ordered.find(({ fromM, toM }) => at >= fromM - 0.01 && at <= toM + 0.01);
    return piece === undefined ? fitting : { ...fitting, drain: piece.id };
  });
}

/** What was seen, told again from the lower end of the line or piece that it lies on; nothing of the stretch. */
function findingsOf({ context, known }: SeenContext, number: number, pieces: readonly Piece[]): Finding[] {
  const again: Finding[] = [];
  for (const [line, placed] of known) {
    const model = context.lines.at(line);
    const own = line === number ? pieces.filter(({ isStretch }) => !isStretch) : null;
    const parts = own ?? [{ id: model.drain.id, fromM: 0, toM: model.lengthM, isStretch: false }];
    // a piece is drawn from its upper end down, another line as it was
    const from = own !== null || model.flowsAsDrawn ? 'end' : 'start';
    for (const { finding, fromM, toM, entries } of placed) {
      for (const part of parts) {
        const [a, b] = [Math.max(fromM, part.fromM), Math.min(toM, part.toM)];
        if (fromM === toM ? b < a : b - a <= HAIR_M) continue;
        const whole = a === fromM && b === toM;
        again.push({
          ...finding,
          drain: part.id,
          from,
          direction: 'upstream',
          atM: a - part.fromM,
          toM: b > a ? b - part.fromM : null,
          entries: whole ? entries : null,
        });
      }
    }
  }
  return again;
}

/**
 * Makes a stretch of line a line of its own, changed as asked for. What was seen in it is gone with the old pipe;
 * what was seen elsewhere stays where it was.
 */
export function splitLine(
  seen: SeenContext,
  number: number,
  [fromM, toM]: readonly [fromM: number, toM: number],
  change: Partial<Drain>,
): SplitSite {
  const { site, lines } = seen.context;
  const line = lines.at(number);
  const pieces = piecesOf(line, fromM, toM);
  const stretch = pieces.find(({ isStretch }) => isStretch) as Piece;
  const drains = site.drains.flatMap((drain, i) =>
    i === number
      ? pieces.map((piece) => ({ ...drainOf(line, piece), ...(piece.isStretch ? change : {}) }))
      : [drain],
  );
  return {
    site: {
      ...site,
      drains,
      fittings: fittingsOf(site, line, pieces),
      findings: findingsOf(seen, number, pieces),
    },
    pieces,
    stretch,
  };
}
