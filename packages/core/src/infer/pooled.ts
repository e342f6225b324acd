import { type Density, densityFrom } from './density.js';
import { GROUP_CV, KIND_CV, logGammaPrior, shapeOf } from './gamma-prior.js';
import { evenGrid, fits, type Span, spanHolding, WIDEST } from './grid.js';
import type { Evidence } from './likelihood.js';
import { lineLogLikelihood } from './line-likelihood.js';

const KIND_SHAPE = shapeOf(KIND_CV);
const GROUP_SHAPE = shapeOf(GROUP_CV);

/** Points of the grids while they are fitted, and of the last ones: over forty to a standard deviation for groups. */
const COARSE = { kind: 41, group: 81 };
const FINE = { kind: 81, group: 481 };

/** What was seen of the lines of one group. */
export type GroupEvidence = readonly Evidence[];

/** Where to look: for the factor of the kind, and for the multiplier of each group. */
interface Spans {
  readonly kind: Span;
  readonly groups: readonly Span[];
}

interface Heights {
  readonly lnKind: Float64Array;
  /** Of the kind's factor, from all evidence. */
  readonly kind: Float64Array;
  readonly groups: readonly { readonly lnM: Float64Array; readonly height: Float64Array }[];
}

const logSumExp = (values: Float64Array): number => {
  const top = values.reduce((a, b) => Math.max(a, b), -Infinity);
  if (top === -Infinity) return top;
  return top + Math.log(values.reduce((sum, v) => sum + Math.exp(v - top), 0));
};

const sumOf = (columns: readonly Float64Array[], start: Float64Array): Float64Array =>
  start.map((value, i) => columns.reduce((sum, column) => sum + (column[i] as number), value));

/** One group on its grid: what it says of the kind's factor, and what that factor says of it. */
class GroupGrid {
  readonly lnM: Float64Array;
  readonly likelihood: Float64Array;
  private readonly m: Float64Array;

  constructor(
    lines: GroupEvidence,
    span: Span,
    points: number,
    private readonly lnKind: Float64Array,
  ) {
    this.lnM = evenGrid(span, points);
    this.m = this.lnM.map(Math.exp);
    this.likelihood = this.lnM.map((x) => lines.reduce((sum, line) => sum + lineLogLikelihood(line, x), 0));
  }

  /** Log prior of the multiplier at one grid point given one value of the kind's factor. */
  private prior(i: number, at: number): number {
    const lnKind = this.lnKind[at] as number;
    return GROUP_SHAPE * ((this.lnM[i] as number) - lnKind - (this.m[i] as number) * Math.exp(-lnKind));
  }

  /** Logarithm of what the group's evidence says of each value of the kind's factor. */
  message(): Float64Array {
    return this.lnKind.map((_, at) => logSumExp(this.likelihood.map((l, i) => l + this.prior(i, at))));
  }

  /** Log height of the multiplier, given that of the kind's factor by all but this group. */
  height(others: Float64Array): Float64Array {
    return this.lnM.map(
      (_, i) => logSumExp(others.map((o, at) => o + this.prior(i, at))) + (this.likelihood[i] as number),
    );
  }
}

function heightsOn(spans: Spans, evidence: readonly GroupEvidence[], points: typeof COARSE): Heights {
  const lnKind = evenGrid(spans.kind, points.kind);
  const prior = lnKind.map((x) => logGammaPrior(x, KIND_SHAPE));
  const grids = evidence.map((e, g) => new GroupGrid(e, spans.groups[g] as Span, points.group, lnKind));
  const messages = grids.map((grid) => grid.message());
  return {
    lnKind,
    kind: sumOf(messages, prior),
    groups: grids.map((grid, g) => ({
      lnM: grid.lnM,
      height: grid.height(
        sumOf(
          messages.filter((_, other) => other !== g),
          prior,
        ),
      ),
    })),
  };
}

/** Grids laid wide, then again on what holds the posterior, until they fit. */
function fittedSpans(evidence: readonly GroupEvidence[]): Spans {
  let spans: Spans = { kind: WIDEST, groups: evidence.map(() => WIDEST) };
  for (;;) {
    const now = spans;
    const { lnKind, kind, groups } = heightsOn(now, evidence, COARSE);
    spans = {
      kind: spanHolding(lnKind, kind),
      groups: groups.map(({ lnM, height }) => spanHolding(lnM, height)),
    };
    const settled = now.groups.every((span, g) => fits(span, spans.groups[g] as Span));
    if (settled && fits(now.kind, spans.kind)) return spans;
  }
}

/**
 * Posterior of the multiplier of every group of one kind of opening, the groups leaning on each other through the
 * factor of the kind: m = kind x group, both gamma with mean 1. Two nested sums over grids, no sampling: the same
 * digits on every run. Everything in it is log-concave, so each posterior has one summit and the grids find it.
 * @param evidence one entry a group of the kind: its lines, in an order that does not hang on how they came.
 * @returns a density for each group, and last the density for a group of the kind that nothing is known of.
 */
export function pooledPosterior(evidence: readonly GroupEvidence[]): Density[] {
  const all = [...evidence, []];
  return heightsOn(fittedSpans(all), all, FINE).groups.map(({ lnM, height }) => densityFrom(lnM, height));
}
