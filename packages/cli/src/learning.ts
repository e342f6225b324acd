import { resolve } from 'node:path';
import {
  type Backtest,
  backtestBySite,
  backtestByTime,
  type Finding,
  type Issue,
  itemsOf,
  type LearnedModel,
  learn,
  observe,
  readSite,
  type Site,
  type SiteRecord,
} from '@rootreach/core';
import { CannotDo } from './cannot-do.js';
import type { Io } from './io.js';
import { Progress } from './progress.js';
import { readInputs } from './read-inputs.js';

/** A back-test, and the same one of the rates as they stand before anything is learned. */
export interface Tried {
  readonly learned: Backtest;
  readonly assumed: Backtest;
}

/** What many sites' findings taught, and how well it stands up. */
export interface Learning {
  readonly asOf: string;
  readonly sites: readonly Site[];
  readonly findings: readonly Finding[];
  readonly model: LearnedModel;
  /** null where there is too little to judge by. */
  readonly bySite: Tried | null;
  readonly byTime: Tried | null;
  readonly issues: readonly Issue[];
}

/** Draws of the intervals are the same on every run. */
const SEED = 20_240_229;
/** Working out what was expected before one finding takes about as long as reading this many features. */
const FEATURES_A_FINDING = 60;

/** Always in the same order, so that the order of the files cannot matter. */
function sortedOnce(files: readonly string[]): string[] {
  const seen = new Set<string>();
  for (const file of files) {
    const path = file === '-' ? file : resolve(file);
    if (seen.has(path)) throw new CannotDo(`${file} is named twice: its findings would count double`);
    seen.add(path);
  }
  return [...files].sort();
}

type Test = (records: readonly SiteRecord[], seed: number) => Backtest | null;

function tried(test: Test, records: readonly SiteRecord[]): Tried | null {
  const learned = test(records, SEED);
  // with nothing to learn from, the same test judges the rates as assumed
  const assumed = test(
    records.map((record) => ({ ...record, observations: [] })),
    SEED,
  );
  return learned && assumed ? { learned, assumed } : null;
}

/** Reads every file as one site, learns from the findings of all and tries out what was learned. */
export async function learnFrom(files: readonly string[], asOf: string, io: Io): Promise<Learning> {
  if (files.length === 0) throw new CannotDo('name the GeoJSON files of the sites, one a site');
  const progress = new Progress(io);
  const inputs = await readInputs(sortedOnce(files), io);
  const readings = inputs.map((input) => ({ name: input.name, ...readSite([input]) }));
  const sites = readings.map(({ site }) => site);
  const findings = sites.flatMap((site) => site.findings);
  const lines = sites.reduce((sum, site) => sum + site.drains.length, 0);
  progress.step('Learning', FEATURES_A_FINDING * findings.length);
  const issues: Issue[] = [];
  const records = readings.map(({ name, site, issues: found }): SiteRecord => {
    const { observations, issues: misplaced } = observe(site, { asOf });
    issues.push(...found, ...misplaced);
    return { name, observations, items: itemsOf(site, name, { asOf }) };
  });
  const observations = records.flatMap((record) => record.observations);
  const model = learn(observations, { sites: sites.length, lines });
  const bySite = tried(backtestBySite, records);
  const byTime = tried(backtestByTime, records);
  return { asOf, sites, findings, model, bySite, byTime, issues };
}
