import { GROUP_CV, KIND_CV, shapeOf } from '../../packages/core/src/infer/gamma-prior.js';
import type { LineModel } from '../../packages/core/src/line/line-model.js';
import { segmentsOf } from '../../packages/core/src/line/segments.js';
import type { Site } from '../../packages/core/src/model/site.js';
import { contextOf, type RiskContext } from '../../packages/core/src/risk/context.js';
import { exposureOf } from '../../packages/core/src/risk/exposure.js';
import { groupsOf, kindOf } from '../../packages/core/src/risk/groups.js';
import { yearOf } from '../../packages/core/src/units/calendar.js';
import { SPECIES } from '../properties/yard.js';
import { type Scene, scene } from '../scenes/scene.js';
import { Chance } from './chance.js';

export const AS_OF = '2026-11-25';

/** How a town is made, and what is true in it. */
export interface TownPlan {
  readonly seed: number;
  readonly sites: number;
  readonly linesPerSite: number;
  /** Multiplier of every group, or drawn from the prior of the model. */
  readonly truth: number | 'prior';
  /** Coefficient of variation of lines about their group: 0 where all lines of a group are alike. */
  readonly lineCv: number;
}

export interface Town {
  /** Sites with their findings, as read from their files. */
  readonly sites: readonly Site[];
  /** True multiplier by group. */
  readonly truth: ReadonlyMap<string, number>;
}

const PIPES: readonly Readonly<Record<string, unknown>>[] = [
  { material: 'clay', joint: 'mortar', piece_m: 0.9 },
  { material: 'concrete', joint: 'mortar', piece_m: 1.2 },
  { material: 'cast-iron', joint: 'mortar', piece_m: 1.5 },
  { material: 'pvc-sdr35', joint: 'gasket', piece_m: 3 },
  { material: 'hdpe-dual-wall', joint: 'gasket', piece_m: 3 },
  { material: 'hdpe-corrugated', joint: 'snap', piece_m: 6 },
  { material: 'pvc-thin-wall', joint: 'snap', piece_m: 3 },
  { material: 'hdpe-corrugated', perforated: true },
  { material: 'pvc-sdr35', perforated: true },
];

/** Multipliers drawn when a group is first met, so that they do not depend on which groups a town has. */
class Truth {
  readonly byGroup = new Map<string, number>();
  private readonly byKind = new Map<string, number>();

  constructor(
    private readonly chance: Chance,
    private readonly plan: TownPlan,
  ) {}

  of(group: string): number {
    if (this.plan.truth !== 'prior') return this.plan.truth;
    const kind = kindOf(group);
    const shared = this.byKind.get(kind) ?? this.chance.gamma(shapeOf(KIND_CV));
    this.byKind.set(kind, shared);
    const own = this.byGroup.get(group) ?? shared * this.chance.gamma(shapeOf(GROUP_CV));
    this.byGroup.set(group, own);
    return own;
  }
}

/** One line with its trees, 80 m from the next. */
function addLine(site: Scene, chance: Chance, number: number): void {
  const lengthM = chance.between(12, 40);
  const northM = 80 * number;
  const installed = chance.whole(1955, 2000);
  site.drain({
    id: `line-${number}`,
    path: [
      [lengthM, northM],
      [0, northM],
    ],
    flow: 'as-drawn',
    installed,
    depth_start_m: chance.between(0.4, 1),
    depth_end_m: chance.between(0.6, 1.5),
    // one in three was cut clean between the two runs of the camera
    ...(chance.uniform() < 1 / 3 ? { cut: CUT } : {}),
    ...chance.one(PIPES),
  });
  for (let t = chance.whole(2, 5); t > 0; t--) {
    const side = chance.uniform() < 0.5 ? -1 : 1;
    const at = [chance.between(0, lengthM), northM + side * chance.between(1, 8)] as const;
    site.tree({ at, species: chance.one(SPECIES), dbh_cm: chance.between(15, 80) });
  }
}

const FIRST_RUN = '2012-05-10';
const CUT = '2013-02-01';
const SECOND_RUN = '2024-06-20';
const YEAR = { first: yearOf(FIRST_RUN) as number, second: yearOf(SECOND_RUN) as number };

type Finding = Readonly<Record<string, unknown>>;

/** How a crew tells of roots: counted by stretch, counted at points, or only whether a line has any. */
const TOLD = ['counted', 'at points', 'some or none'] as const;
type Told = (typeof TOLD)[number];

/** Stretch of a line that fills with roots on its own. */
interface Cell {
  readonly fromM: number;
  readonly toM: number;
  entries: number;
}

/** What is true of one line: entries by cell, as a Poisson process through the model's own exposures. */
class LineTruth {
  readonly cells: Cell[];

  constructor(
    private readonly context: RiskContext,
    private readonly line: LineModel,
    private readonly chance: Chance,
    private readonly multiplier: number,
  ) {
    this.cells = segmentsOf(line.lengthM, [], 2.5).map((s) => ({ ...s, entries: 0 }));
  }

  /** Lets roots in for some years, where there are none: those that are in stay as they were first seen. */
  grow(fromYear: number, toYear: number): void {
    for (const cell of this.cells) {
      if (cell.entries > 0) continue;
      const { entry } = exposureOf(this.context, this.line, [cell.fromM, cell.toM], fromYear, toYear);
      cell.entries = this.chance.poisson(this.multiplier * entry);
    }
  }

  cut(): void {
    for (const cell of this.cells) cell.entries = 0;
  }

  /** Writes a run of the camera down. How it is told hangs on the line and not on what was seen. */
  record(date: string, told: Told): Finding[] {
    const note = (what: Finding): Finding => ({ drain: this.line.drain.id, from: 'end', date, ...what });
    if (told === 'some or none') {
      const roots = this.cells.some((cell) => cell.entries > 0);
      return [note({ at_m: 0, to_m: this.line.lengthM, seen: roots ? 'mass' : 'clear' })];
    }
    const findings: Finding[] = [];
    let clearFrom: number | null = null;
    for (const { fromM, toM, entries } of this.cells) {
      if (entries === 0) {
        clearFrom ??= fromM;
        continue;
      }
      if (clearFrom !== null) findings.push(note({ at_m: clearFrom, to_m: fromM, seen: 'clear' }));
      clearFrom = null;
      if (told === 'at points') findings.push(note({ at_m: (fromM + toM) / 2, seen: 'fine', entries }));
      else findings.push(note({ at_m: fromM, to_m: toM, seen: 'fine', entries }));
    }
    if (clearFrom !== null) findings.push(note({ at_m: clearFrom, to_m: this.line.lengthM, seen: 'clear' }));
    return findings;
  }
}

function addFindings(site: Scene, chance: Chance, truth: Truth, plan: TownPlan): void {
  const context = contextOf(site.site(), { asOf: AS_OF });
  for (let number = 0; number < context.lines.count; number++) {
    const line = context.lines.at(number);
    const { installedYear, cutYear } = line.drain;
    const ofLine = plan.lineCv > 0 ? chance.gamma(shapeOf(plan.lineCv)) : 1;
    const roots = new LineTruth(context, line, chance, truth.of(groupsOf(line).entry) * ofLine);
    roots.grow(installedYear as number, YEAR.first);
    const told = chance.one(TOLD);
    for (const finding of roots.record(FIRST_RUN, told)) site.finding(finding);
    if (cutYear !== null) roots.cut();
    roots.grow(cutYear ?? YEAR.first, YEAR.second);
    for (const finding of roots.record(SECOND_RUN, told)) site.finding(finding);
  }
}

/** A town of invented gardens whose true multipliers are known. */
export function townOf(plan: TownPlan): Town {
  const chance = new Chance(plan.seed);
  const truth = new Truth(new Chance(plan.seed + 500_000), plan);
  const sites = Array.from({ length: plan.sites }, () => {
    const site = scene();
    for (let number = 1; number <= plan.linesPerSite; number++) addLine(site, chance, number);
    addFindings(site, chance, truth, plan);
    return site.site();
  });
  return { sites, truth: truth.byGroup };
}
