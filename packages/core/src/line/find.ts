import type { Issue } from '../model/issue.js';
import type { Finding } from '../model/site.js';
import type { LineModel } from './line-model.js';

/** A finding laid on its line: stations from the outlet end. */
export interface PlacedFinding {
  readonly finding: Finding;
  readonly fromM: number;
  readonly toM: number;
}

/** A reel may run over the line's end by this much before we doubt the counter, metres (judgement). */
const SLACK_M = 0.5;

/** Station of the place a reel starts from. `start` and `end` are the line's ends as drawn. */
function stationOfStart(line: LineModel, from: string | null): number | null {
  const startAsDrawn = line.flowsAsDrawn ? line.lengthM : 0;
  if (from === null || from === 'start') return startAsDrawn;
  if (from === 'end') return line.lengthM - startAsDrawn;
  return line.fittings.find((f) => f.id === from)?.stationM ?? null;
}

function issueFor(finding: Finding, reason: string): Issue {
  return {
    code: 'finding-misplaced',
    severity: 'error',
    reason,
    place: { ...finding.origin, feature: finding.id, path: 'properties' },
  };
}

/**
 * Lays what a camera saw on its line by the reel's counter. From an end the reel runs into the line; from a
 * fitting part-way it is taken to run upstream, or downstream where there is no room upstream.
 */
export function placeFinding(line: LineModel, finding: Finding): PlacedFinding | Issue {
  const start = stationOfStart(line, finding.from);
  if (start === null) return issueFor(finding, `no fitting '${finding.from}' on line '${line.drain.id}'`);
  const near = finding.atM;
  const far = finding.toM ?? finding.atM;
  const reelM = Math.max(near, far);
  const upstream = reelM <= line.lengthM - start + SLACK_M;
  const past = reelM - Math.max(line.lengthM - start, start);
  if (past > SLACK_M) {
    return issueFor(finding, `the reel ran ${past.toFixed(1)} m past the end of line '${line.drain.id}'`);
  }
  const onLine = (m: number): number => Math.min(line.lengthM, Math.max(0, start + (upstream ? m : -m)));
  const [one, other] = [onLine(near), onLine(far)];
  return { finding, fromM: Math.min(one, other), toM: Math.max(one, other) };
}
