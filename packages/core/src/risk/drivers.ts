import { holds } from '../line/holds.js';
import type { Driver } from '../model/result.js';
import type { Tree } from '../model/site.js';
import { judgement } from '../tables/judgement.js';
import { pipeRow } from '../tables/pipes.js';
import { fromFeet } from '../units/length.js';
import { clockOf } from './clock.js';
import type { PreparedLine, RiskContext } from './context.js';
import { chanceOf } from './interval.js';
import { addLoad, Load, type LoadInputs } from './load.js';
import { type OpeningChange, Openings, stiffnessOf } from './openings.js';
import { treeName } from './tree-name.js';
import { WAY_CRUSH, WAY_JOINT } from './ways.js';

/** A change that moves the score by less than this many points is not worth a line (judgement). */
const LEAST_POINTS = 0.5;
/** Trees worth asking about: those that bring at least this share, and no more than two (judgement). */
const LEAST_SHARE = 0.15;
const MOST_TREES = 2;
/** A foot deeper: what a crew would dig without asking. */
const DEEPER_M = fromFeet(1);

/** Columns that every "what if" of a segment uses in turn: nothing outlives the score that is read from them. */
const scratch = { openings: new Openings(), load: new Load(0, 0) };

function scoreOf(prepared: PreparedLine, inputs: LoadInputs, from: number, to: number): number {
  const moments = inputs.horizon.weights.length;
  if (scratch.load.perYear.length !== moments) scratch.load = new Load(moments, prepared.near.count);
  scratch.load.clear(prepared.near.count);
  addLoad(inputs, from, to, scratch.load);
  return 100 * chanceOf(scratch.load.total);
}

/** Score of segment `i` with changed openings. */
function withOpenings(prepared: PreparedLine, i: number, change: OpeningChange): number {
  const { openings } = scratch;
  openings.fill(prepared.line, i, i + 1, { scale: prepared.scale, ...change });
  return scoreOf(prepared, { ...prepared.inputs, openings }, 0, openings.first[1] as number);
}

function withTreeFactor(prepared: PreparedLine, i: number, tree: number, factor: number): number {
  const { first } = prepared.inputs.openings;
  const treeFactor = new Float64Array(prepared.near.count).fill(1);
  treeFactor[tree] = factor;
  return scoreOf(prepared, { ...prepared.inputs, treeFactor }, first[i] as number, first[i + 1] as number);
}

function treeDrivers(context: RiskContext, prepared: PreparedLine, i: number, load: Load): Driver[] {
  const order = Array.from(load.byTree, (value, t) => ({ t, share: value / load.total }))
    .filter(({ share }) => share >= LEAST_SHARE)
    .sort((a, b) => b.share - a.share)
    .slice(0, MOST_TREES);
  return order.flatMap(({ t }) => {
    const number = prepared.near.number[t] as number;
    const tree = context.field.trees[number] as Tree;
    const name = treeName(context.field, number);
    return [
      {
        code: 'tree-absent' as const,
        tree: tree.id,
        change: `without the ${name} (${tree.id})`,
        scoreWithout: withTreeFactor(prepared, i, t, 0),
      },
      {
        code: 'root-barrier' as const,
        tree: tree.id,
        change: `a sound root barrier against the ${name} (${tree.id})`,
        scoreWithout: withTreeFactor(prepared, i, t, judgement.barrierFactor.value),
      },
    ];
  });
}

/** Next stouter pipe on the shelf: gasketed sewer pipe, else heavy-wall PVC. */
function stouter(prepared: PreparedLine): { name: string; stiffnessPa: number } | null {
  const now = stiffnessOf(prepared.line.pipe, prepared.line.drain.sizeM);
  for (const key of ['pvc-sdr35', 'pvc-sch40'] as const) {
    const row = pipeRow(key);
    const stiffnessPa = stiffnessOf(row, prepared.line.drain.sizeM);
    if (stiffnessPa > 1.2 * now) return { name: row.name, stiffnessPa };
  }
  return null;
}

function pipeDrivers(prepared: PreparedLine, i: number, load: Load): Driver[] {
  const drivers: Driver[] = [];
  const sealed = judgement.sealedJointFactorMax.value;
  const add = (code: Driver['code'], change: string, scoreWithout: number): void => {
    drivers.push({ code, tree: null, change, scoreWithout });
  };
  if (load.byWay(WAY_JOINT) > 0) {
    const change = { jointFactor: (_: unknown, usual: number) => Math.min(usual, sealed) };
    add('seal-joints', 'joints sealed', withOpenings(prepared, i, change));
  }
  const segment = prepared.line.segments[i] as { fromM: number; toM: number };
  const last = i === prepared.line.segments.length - 1;
  const branch = prepared.line.fittings.find(
    (f) => (f.type === 'wye' || f.type === 'tee') && f.joints > 0 && holds(segment, f.stationM, last),
  );
  if (branch) {
    const change: OpeningChange = {
      jointFactor: (place, usual) => (place.fitting === branch.id ? Math.min(usual, sealed) : usual),
    };
    add(
      'basin-for-wye',
      `${branch.type} ${branch.id} replaced by a basin with sealed entries`,
      withOpenings(prepared, i, change),
    );
  }
  const pipe = stouter(prepared);
  if (pipe && load.byWay(WAY_CRUSH) > 0) {
    add(
      'stouter-pipe',
      `wall as stout as ${pipe.name}`,
      withOpenings(prepared, i, { stiffnessPa: pipe.stiffnessPa }),
    );
  }
  add('deeper', 'a foot deeper', withOpenings(prepared, i, { deeperM: DEEPER_M }));
  return drivers;
}

function clockDriver(context: RiskContext, prepared: PreparedLine, i: number): Driver {
  const { drain, pipe } = prepared.line;
  const { first } = prepared.inputs.openings;
  const clock = clockOf(
    { ...drain, dugYear: context.nowYear, cutYear: null },
    pipe,
    context.nowYear,
    context.horizon,
  );
  return {
    code: 'dig-and-clear',
    tree: null,
    change: 'dug open and cleared of roots now',
    scoreWithout: scoreOf(
      prepared,
      { ...prepared.inputs, clock },
      first[i] as number,
      first[i + 1] as number,
    ),
  };
}

/** What would change a segment's score, each recomputed with the model; the strongest first. */
export function driversOf(context: RiskContext, prepared: PreparedLine, i: number, load: Load): Driver[] {
  if (load.total <= 0) return [];
  const score = 100 * chanceOf(load.total);
  return [
    ...treeDrivers(context, prepared, i, load),
    ...pipeDrivers(prepared, i, load),
    clockDriver(context, prepared, i),
  ]
    .filter((driver) => score - driver.scoreWithout >= LEAST_POINTS)
    .sort((a, b) => a.scoreWithout - b.scoreWithout);
}
