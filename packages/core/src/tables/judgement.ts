import type { SourceKey } from '../sources/bibliography.js';
import { fromPsi } from '../units/pressure.js';

/** A constant with the spread we give it. */
export interface Judged<T> {
  readonly value: T;
  /** Standard deviation of its natural logarithm; 0 where it is a rule rather than an estimate. */
  readonly logSd: number;
  readonly why: string;
  /** Published work that orders or scales the choice. */
  readonly restsOn: readonly SourceKey[];
}

const judged = <T>(value: T, logSd: number, why: string, ...restsOn: readonly SourceKey[]): Judged<T> => ({
  value,
  logSd,
  why,
  restsOn,
});

/** A spread that replaces a missing input. */
const spread = (logSd: number, why: string): Judged<1> => judged(1, logSd, why);

/** Every number of the model's relations that is our own choice, with its spread; those of a pipe, a joint or a species stand in its row. */
export const judgement = {
  /** Entries per joint and year at pressure 1 and 0.6 m depth, unsealed rigid joint. */
  entryRatePerJointYear: judged(
    0.006,
    0.7,
    'scaled so that old foul mains in the inventory of Östberg and others (2012) come out at 0.065 a joint',
    'ostberg-2012',
  ),
  /** Openness of a metre of perforated pipe against one unsealed joint. */
  perforatedUnwrappedPerM: judged(
    1.2,
    0.7,
    'open all along; a little more than an unsealed joint each metre',
  ),
  perforatedWrappedPerM: judged(0.7, 0.7, 'fabric slows roots but does not stop them'),
  /** Crushing or heaving events per metre and year at pressure 1 and the reference stiffness. */
  crushRatePerMetreYear: judged(
    0.0008,
    0.7,
    'thin corrugated line past a large tree gets about 4 % in ten years from this alone',
  ),
  crushReferenceStiffness: judged(fromPsi(35), 0, 'stiffness at which the crush rate is given'),
  /** Weight of vigour classes 1 to 5. */
  vigourWeights: judged(
    [0.6, 0.8, 1.0, 1.3, 1.6] as const,
    0.35,
    'lists disagree and the one field count found most species capable, so the range is kept modest',
    'ostberg-2012',
    'utility-root-list',
  ),
  /** Size weight: min(1, D / sizeFullM) ^ sizeExponent. */
  sizeExponent: judged(0.5, 0, 'roots in reach of a pipe grow slower than the stem'),
  sizeFullM: judged(0.3, 0, 'a stem of 30 cm counts as a grown tree'),
  /** Depth factor along a pipe: exp(-(z - reference) / scale), at most the clamp. */
  depthReferenceM: judged(0.6, 0, 'depth at which the entry rate is given'),
  depthScaleM: judged(
    1.5,
    0,
    'roots follow the loose moist backfill down, so less drop than in natural ground',
  ),
  depthFactorMax: judged(1.5, 0, 'a very shallow pipe is no more than half again as exposed'),
  /** Age factor of joints: 1 + age / slope, at most the cap. */
  ageSlopeYears: judged(50, 0, 'seals relax and mortar crumbles over decades'),
  ageFactorMax: judged(2, 0, 'no more than doubled'),
  wetFactors: judged(
    { dry: 1, often: 1.3, standing: 1.6 } as const,
    0,
    'storm lines are dry between rains; lingering water draws roots',
  ),
  soilReachFactors: judged(
    { sand: 1.1, loam: 1, clay: 0.9 } as const,
    0,
    'roots run further in loose poor ground, less far in dense ground',
  ),
  pavedReachFactor: judged(0.8, 0, 'paved or compacted ground between stem and pipe'),
  barrierFactor: judged(0.3, 0, 'barriers cut root numbers strongly in trials; roots escape under and round'),
  felledDecayYears: judged(5, 0, 'live roots of a felled tree fade to none'),
  /** Growth of the root front back towards a dug line, by vigour class 1 to 5. */
  regrowthMetresPerYear: judged(
    [0.45, 0.6, 0.75, 0.95, 1.2] as const,
    0.35,
    'ends are half the 0.9 to 2.4 m a year in diameter of Gilman (1990); the middle is ours',
    'gilman-1990',
  ),
  clockMinYears: judged(2, 0.35, 'roots need time to find a new trench even beside the stem'),
  clockMaxYears: judged(10, 0.35, 'replacing a lost root system takes up to ten years', 'gilman-1990'),
  cutClockYears: judged(2, 0.35, 'removal every one to two years is common', 'randrup-2001'),
  reach: judged(1, 0.25, 'scatter of trees about the reach'),
  /** Spread common to all joint factors. */
  jointFactor: judged(1, 0.7, 'joints of one kind differ with the care taken'),
  sealedJointFactorMax: judged(0.25, 0.7, 'a joint said to be sealed is taken no worse than a gasketed bell'),
  unsealedJointFactorMin: judged(
    0.8,
    0.7,
    'a joint said to be unsealed is taken no better than a snap coupler',
  ),
  assumedCoverM: judged(0.6, 0.3, 'usual cover of a yard drain'),
  /** Score limits between the bands. */
  bandLimits: judged(
    { watch: 5, inspect: 20, act: 50 } as const,
    0,
    'per cent within the horizon; to be moved to taste',
  ),
  nextLook: judged(
    { targetChance: 0.1, minYears: 1, maxYears: 10 } as const,
    0,
    'look before one chance in ten has passed, at least every ten years',
  ),
  lineFromItsKindCv: judged(
    0.5,
    0,
    'lines of one kind differ by half with the care of the crew and the ground',
  ),
  materialUnknown: spread(0.7, 'joints may be anything from welded to open'),
  ageUnknown: spread(0.3, 'half the expected life, give or take'),
  depthUnknown: spread(0.3, 'yard drains lie between 0.3 and 1 m'),
  stemUnknown: spread(0.5, 'stem taken from crown, height or a mature tree'),
  speciesUnknown: spread(0.3, 'vigour may be any class'),
} as const;

/** Our own choices in what water a line carries; no score of a root rests on them. */
export const waterJudgement = {
  /** Share of the section lost where the camera's log does not say. */
  blockedShareBySeen: judged(
    { fine: 0.1, mass: 0.5, full: 0.95, crushed: 0.5, sag: 0.2, offset: 0.15 } as const,
    0.5,
    'fine roots hardly narrow a pipe, a mass takes half of it, a full pipe only seeps; a sag holds silt',
  ),
  /** Fall at which a yard drain is usually laid. */
  usualSlope: judged(
    0.01,
    0,
    'an eighth of an inch per foot is the least that codes ask for',
    'chicago-plumbing-code',
  ),
  /** A level further from the end of a line than this is said so, metres. */
  levelBesideM: judged(1, 0, 'lawns fall a few hundredths in a metre, as much as a short line falls in all'),
  /** A size counts as a nominal one within this share of it. */
  nominalSizeShare: judged(0.04, 0, 'tells 4 in from 100 mm and both from 110 mm'),
} as const;
