import { lonLatOf } from '../geometry/plane.js';
import { pointAt } from '../geometry/polyline.js';
import type { LineModel, PlacedFitting } from '../line/line-model.js';
import type { DigFitting } from '../model/dig.js';
import type { Drain, Fitting, FittingType, Site } from '../model/site.js';
import type { ChoiceWork } from '../model/works.js';
import type { MaterialKey } from '../tables/pipe-row.js';
import { digStretch } from './dig-stretch.js';
import { asItIs, type Case, type Plan } from './plan.js';
import { type Piece, type SplitSite, splitLine } from './split-line.js';

/** A fitting this close to a station is at it, metres. */
const AT_M = 0.3;
/** Fittings at which a line may end without a coupling to another pipe. */
const ENDS: readonly FittingType[] = ['basin', 'cleanout', 'downspout', 'outlet', 'cap'];
/** Fittings that go out with the pipe and come back new. */
const BOUGHT_AGAIN: readonly FittingType[] = [
  'wye',
  'tee',
  'bend',
  'reducer',
  'cleanout',
  'downspout',
  'outlet',
  'cap',
];
/** Fittings at which another line comes in, that a basin can stand for. */
export const BRANCHES: readonly FittingType[] = ['wye', 'tee'];

type WorkFitting = ChoiceWork['fittings'][number];

export const fittingAt = (line: LineModel, stationM: number): PlacedFitting | undefined =>
  line.fittings.find((fitting) => Math.abs(fitting.stationM - stationM) <= AT_M);

/** Stations of the stretch at which another line meets it. */
export const meetings = ({ network, stretch }: Case, fromM: number, toM: number): number[] =>
  [...new Set(network.joinsOf(stretch.number).map(({ stationM }) => stationM))]
    .filter((at) => at >= fromM - AT_M && at <= toM + AT_M)
    .sort((a, b) => a - b);

/** What is done at one end of new pipe: nothing, a coupling to the old one, or a basin. */
function endFitting(c: Case, atM: number, basins: boolean): WorkFitting | null {
  const { line } = c.stretch;
  const inside = atM > 0.01 && atM < line.lengthM - 0.01;
  const there = fittingAt(line, atM);
  if (inside) return { type: 'coupling', atM, replaces: null };
  if (there !== undefined && ENDS.includes(there.type)) return null;
  if (meetings(c, atM, atM).length === 0) return null;
  const replaces = there?.id ?? null;
  return basins ? { type: 'basin', atM, replaces } : { type: 'coupling', atM, replaces };
}

/** New fittings of a renewed stretch: those of the old pipe again, its ends, and basins where lines meet. */
function newFittings(c: Case, { fromM, toM }: Piece, basins: boolean): WorkFitting[] {
  const { line } = c.stretch;
  const ends = [endFitting(c, fromM, basins), endFitting(c, toM, basins)].filter((end) => end !== null);
  const inside = line.fittings
    .filter(
      ({ stationM, type }) =>
        BOUGHT_AGAIN.includes(type) && stationM >= fromM - 0.01 && stationM <= toM + 0.01,
    )
    .filter(({ id }) => !ends.some(({ replaces }) => replaces === id))
    .map(({ id, type, stationM }): WorkFitting => {
      const asBasin = basins && BRANCHES.includes(type) && meetings(c, stationM, stationM).length > 0;
      return { type: asBasin ? 'basin' : type, atM: stationM, replaces: id };
    });
  return [...inside, ...ends].sort((a, b) => a.atM - b.atM);
}

/** Id of a fitting that was not there before. */
const newId = ({ drain }: LineModel, { type, atM }: WorkFitting): string =>
  `${drain.id} new ${type} ${atM.toFixed(1)}`;

/** The site with the new fittings in it; basins belong to all lines that come up to them. */
export function withFittings(
  site: Site,
  line: LineModel,
  owner: string,
  fittings: readonly WorkFitting[],
  sealed: boolean | null,
): Site {
  const made = fittings.map((fitting): Fitting => {
    const [x, y] = pointAt(line.polyline, fitting.atM);
    const old = site.fittings.find(({ id }) => id === fitting.replaces);
    return {
      id: old?.id ?? newId(line, fitting),
      origin: old?.origin ?? line.drain.origin,
      type: fitting.type,
      position: old?.position ?? lonLatOf(line.plane, x, y),
      sealed: fitting.type === 'basin' ? true : sealed,
      drain: fitting.type === 'basin' ? null : owner,
    };
  });
  const gone = new Set(fittings.map(({ replaces }) => replaces));
  return { ...site, fittings: [...site.fittings.filter(({ id }) => !gone.has(id)), ...made] };
}

/** Fittings as they are bought, like with like. */
export function counted(fittings: readonly WorkFitting[]): DigFitting[] {
  const counts = new Map<FittingType, number>();
  for (const { type } of fittings) counts.set(type, (counts.get(type) ?? 0) + 1);
  return [...counts].map(([type, count]) => ({ type, count }));
}

/** The parts of the stretch that was asked about, on the pieces that its line is cut into. */
export const partsOn = ({ stretch }: Case, { pieces }: Pick<SplitSite, 'pieces'>): Plan['parts'] =>
  pieces.flatMap(({ id, fromM, toM }) => {
    const [a, b] = [Math.max(fromM, stretch.fromM), Math.min(toM, stretch.toM)];
    return b - a > 1e-6 ? [{ drainId: id, fromM: a - fromM, toM: b - fromM }] : [];
  });

export interface Renewal {
  readonly pipe: MaterialKey;
  readonly fromM: number;
  readonly toM: number;
  /** A basin wherever another line meets the new pipe. */
  readonly basins: boolean;
  /** Laying length; the pipe's usual one where not given. */
  readonly pieceM?: number;
}

/** A stretch of pipe dug out and laid anew in its old place. */
export function renewed(c: Case, id: Plan['id'], { pipe, fromM, toM, basins, pieceM }: Renewal): Plan {
  const { drain } = c.stretch.line;
  const change: Partial<Drain> = {
    material: pipe,
    materialKnown: true,
    sizeM: c.sizeM,
    joint: null,
    pieceM: pieceM ?? null,
    sealed: null,
    sealMPa: null,
    installedYear: c.nowYear,
    dugYear: c.nowYear,
    cutYear: null,
    // new pipe is laid to an even fall and holds no water
    wet: drain.wet === 'standing' ? 'often' : drain.wet,
  };
  const split = splitLine(c.seen, c.stretch.number, [fromM, toM], change);
  const fittings = newFittings(c, split.stretch, basins);
  const { digs, stretches } = digStretch(c.around, split.stretch.fromM, split.stretch.toM, {
    pipe,
    sizeM: c.sizeM,
    perforated: drain.perforated,
    wrapped: drain.wrapped,
    bedding: 'gravel',
    takesOut: true,
    fittings: counted(fittings),
    handDigDiameters: c.assumed['hand-dig-diameters'],
  });
  return {
    ...asItIs(c, id),
    site: withFittings(split.site, c.stretch.line, split.stretch.id, fittings, null),
    parts: partsOn(c, split),
    left: null,
    work: { fromM: split.stretch.fromM, toM: split.stretch.toM, pipe, sizeM: c.sizeM, fittings },
    digs,
    pieceM: pieceM ?? null,
    stretches,
  };
}
