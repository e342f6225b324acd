import { xOf, yOf } from '../geometry/plane.js';
import { nearestOn, pointAt, sliceOf } from '../geometry/polyline.js';
import { depthAt, type LineModel } from '../line/line-model.js';
import type { Bedding, Dig, DigFitting, DigSurface } from '../model/dig.js';
import type { TreeZones } from '../model/result.js';
import type { Site } from '../model/site.js';
import { outsideDiameterM } from '../quantities/outside-diameter.js';
import { trenchWidthM } from '../quantities/trench-width.js';
import type { Stretch as HarmStretch, HarmTree } from '../roots/harm.js';
import { noDigRadius } from '../roots/protection.js';
import { holds, type Shape, shapeOf } from '../route/shapes.js';
import type { MaterialKey } from '../tables/pipe-row.js';
import { trenchNumbers } from '../tables/work-judgement.js';
import { metres } from '../units/quantity.js';

/** The line is looked at this often for what lies over it and stands beside it, metres. */
const STEP_M = 0.25;

/** Ground and trees along a line, in its plane. */
export interface Surroundings {
  readonly line: LineModel;
  readonly paved: readonly Shape[];
  readonly built: readonly Shape[];
  readonly trees: readonly HarmTree[];
}

export function surroundingsOf(site: Site, line: LineModel, zones: readonly TreeZones[]): Surroundings {
  const { plane } = line;
  const outlines = (types: readonly string[]): Shape[] =>
    site.obstacles.flatMap(({ type, shape }) =>
      types.includes(type) && shape.type === 'area' ? [shapeOf(shape.rings, plane, true)] : [],
    );
  return {
    line,
    paved: outlines(['paving']),
    built: outlines(['building', 'pool']),
    trees: zones.map((tree) => ({
      id: tree.id,
      x: xOf(plane, tree.lon),
      y: yOf(plane, tree.lat),
      stemDiameterM: tree.stemDiameterM,
      structuralM: tree.structuralM,
      protectionM: tree.protectionM,
      driplineM: tree.driplineM,
    })),
  };
}

/** What is to be laid or set along a stretch. */
export interface Laying {
  readonly pipe: MaterialKey | null;
  readonly sizeM: number;
  readonly perforated: boolean;
  readonly wrapped: boolean;
  readonly bedding: Bedding;
  readonly takesOut: boolean;
  readonly fittings: readonly DigFitting[];
  readonly handDigDiameters: number;
}

type Way = 'machine' | 'hand' | 'bored';

interface Step {
  readonly fromM: number;
  readonly toM: number;
  readonly surface: DigSurface;
  readonly way: Way;
}

function stepAt(
  around: Surroundings,
  fromM: number,
  toM: number,
  halfWidthM: number,
  diameters: number,
): Step {
  const [x, y] = pointAt(around.line.polyline, (fromM + toM) / 2);
  const under = (shapes: readonly Shape[]): boolean => shapes.some((shape) => holds(shape, x, y));
  let way: Way = under(around.built) ? 'bored' : 'machine';
  for (const tree of around.trees) {
    const gap = nearestOn(around.line.polyline, tree.x, tree.y, fromM, toM).distance - halfWidthM;
    if (gap < noDigRadius(metres(tree.stemDiameterM))) way = 'bored';
    else if (gap < diameters * tree.stemDiameterM && way === 'machine') way = 'hand';
  }
  return { fromM, toM, surface: under(around.paved) ? 'paving' : 'lawn', way };
}

/** Steps that are alike and follow one another as one. */
function stepsOf(
  around: Surroundings,
  fromM: number,
  toM: number,
  halfWidthM: number,
  diameters: number,
): Step[] {
  const count = Math.max(1, Math.ceil((toM - fromM) / STEP_M - 1e-9));
  const at = (i: number): number => (i === count ? toM : fromM + ((toM - fromM) * i) / count);
  const steps: Step[] = [];
  for (let i = 0; i < count; i++) {
    const step = stepAt(around, at(i), at(i + 1), halfWidthM, diameters);
    const last = steps[steps.length - 1];
    if (last?.surface === step.surface && last.way === step.way)
      steps[steps.length - 1] = { ...last, toM: step.toM };
    else steps.push(step);
  }
  return steps;
}

/** The digs of a stretch, and the same as harm to trees is judged from. */
export interface DugStretch {
  readonly digs: readonly Dig[];
  readonly stretches: readonly HarmStretch[];
}

/**
 * Digs for a stretch of a line in its old place: by machine, by hand or air near a stem, bored within three trunk
 * diameters and under buildings.
 */
export function digStretch(around: Surroundings, fromM: number, toM: number, laying: Laying): DugStretch {
  const { line } = around;
  const outsideM = outsideDiameterM(laying.pipe ?? line.drain.material, laying.sizeM);
  const below = laying.pipe === null || laying.bedding === 'native' ? 0 : trenchNumbers.beddingBelowM.value;
  const bottomAt = (station: number): number => depthAt(line, station) + outsideM + below;
  const widthM = trenchWidthM(outsideM, Math.max(bottomAt(fromM), bottomAt(toM)));
  const steps = stepsOf(around, fromM, toM, widthM / 2, laying.handDigDiameters);
  const digs = steps.map((step, i): Dig => {
    const lengthM = step.toM - step.fromM;
    return {
      lengthM,
      depthStartM: bottomAt(step.fromM),
      depthEndM: bottomAt(step.toM),
      widthM,
      surface: step.surface,
      bored: step.way === 'bored',
      handDig: step.way === 'hand',
      pipe: laying.pipe,
      sizeM: laying.sizeM,
      perforated: laying.perforated,
      wrapped: laying.wrapped,
      bedding: step.way === 'bored' ? 'native' : laying.bedding,
      stoneM: null,
      oldPipeM: laying.takesOut && step.way !== 'bored' ? lengthM : 0,
      barrierM: 0,
      fittings: i === 0 ? laying.fittings : [],
    };
  });
  const stretches = steps.map(
    (step): HarmStretch => ({
      path: sliceOf(line.polyline, step.fromM, step.toM),
      widthM,
      bored: step.way === 'bored',
      topDepthM: step.way === 'bored' ? depthAt(line, (step.fromM + step.toM) / 2) : null,
    }),
  );
  return { digs, stretches };
}
