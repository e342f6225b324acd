import type { Learning, Tried } from '../learning.js';
import { groupName } from './group-name.js';
import { groupSentence } from './group-sentence.js';
import { plainIssues } from './issues.js';

/** A back-test for scripts; its curves have a point for every stretch and are left to the picture. */
function plainTest(tried: Tried | null): unknown {
  if (tried === null) return null;
  const { curve: _curve, baselines, ...learned } = tried.learned;
  const bare = ({ curve: _, ...score }: typeof baselines.age) => score;
  return {
    ...learned,
    baselines: {
      unlearned: {
        ...bare(baselines.unlearned),
        brier: tried.assumed.brier,
        calibration: tried.assumed.calibration,
      },
      nearestTree: bare(baselines.nearestTree),
      age: bare(baselines.age),
    },
  };
}

/** What was learned, for scripts. */
export function learnedJson({
  asOf,
  sites,
  findings,
  model,
  bySite,
  byTime,
  issues,
}: Learning): Record<string, unknown> {
  return {
    schema: 1,
    model: model.model,
    fingerprint: model.data.fingerprint,
    asOf,
    sites: sites.length,
    lines: model.data.lines,
    findings: findings.length,
    observations: model.data.observations,
    groups: model.groups.map((group) => ({
      ...group,
      name: groupName(group.group),
      words: groupSentence(group),
    })),
    kinds: model.kinds,
    backtest: plainTest(bySite),
    backtestByTime: plainTest(byTime),
    issues: plainIssues(issues),
  };
}
