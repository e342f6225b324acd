import { type PlacedFinding, placeFinding } from '../line/find.js';
import type { LineLayout, LineModel } from '../line/line-model.js';
import { Network } from '../line/network.js';
import type { Issue } from '../model/issue.js';
import type { KnownTrouble } from '../model/result.js';
import type { Finding, Seen, Site } from '../model/site.js';

/** How bad a sight is, for choosing the one that counts. */
const SEVERITY: Record<Seen, number> = { clear: 0, fine: 1, offset: 2, sag: 2, mass: 3, full: 4, crushed: 5 };

/** What the camera has seen on each line, by line number. */
export type KnownByLine = ReadonlyMap<number, readonly PlacedFinding[]>;

/** Lays every finding on its line or lines; those whose counter cannot be right are reported. */
export function placeFindings(site: Site, lines: LineLayout): { byLine: KnownByLine; issues: Issue[] } {
  const byLine = new Map<number, PlacedFinding[]>();
  const issues: Issue[] = [];
  if (site.findings.length === 0) return { byLine, issues };
  const network = new Network(site, lines);
  for (const finding of site.findings) {
    const placed = placeFinding(network, finding);
    if ('code' in placed) {
      issues.push(placed);
      continue;
    }
    for (const piece of placed) byLine.set(piece.line, [...(byLine.get(piece.line) ?? []), piece]);
  }
  return { byLine, issues };
}

/** True where the line was opened, or (for roots inside) cut, after the finding. */
function dealtWith(line: LineModel, finding: Finding): boolean {
  const { dugYear, cutYear, installedYear } = line.drain;
  if (finding.year === null) return false;
  const dug = Math.max(dugYear ?? -Infinity, installedYear ?? -Infinity);
  if (dug > finding.year) return true;
  const inside = finding.seen === 'fine' || finding.seen === 'mass' || finding.seen === 'full';
  return inside && cutYear !== null && cutYear > finding.year;
}

/** What two stretches that end at one reading share by rounding is no part of both, metres (judgement). */
export const HAIR_M = 1e-6;

const meets = (placed: PlacedFinding, fromM: number, toM: number): boolean =>
  placed.fromM === placed.toM
    ? placed.fromM >= fromM && (placed.fromM < toM || placed.fromM === toM)
    : Math.min(placed.toM, toM) - Math.max(placed.fromM, fromM) > HAIR_M;

function troubleOf({ finding, direction }: PlacedFinding): KnownTrouble {
  const { seen, year, blockedShare, from, atM, toM } = finding;
  const reel = {
    from: from ?? 'start',
    direction,
    atM: Math.min(atM, toM ?? atM),
    toM: Math.max(atM, toM ?? atM),
  };
  return { seen, year, blockedShare, reel };
}

/** Trouble known in a stretch and not dealt with since: the newest sight of it, the worst of one day. */
export function knownIn(
  line: LineModel,
  findings: readonly PlacedFinding[],
  fromM: number,
  toM: number,
): KnownTrouble | null {
  let best: PlacedFinding | null = null;
  for (const placed of findings) {
    const { finding } = placed;
    if (!meets(placed, fromM, toM) || dealtWith(line, finding)) continue;
    const [year, bestYear] = [finding.year ?? -Infinity, best?.finding.year ?? -Infinity];
    const worse = best === null || SEVERITY[finding.seen] > SEVERITY[best.finding.seen];
    if (year > bestYear || (year === bestYear && worse)) best = placed;
  }
  return best === null || best.finding.seen === 'clear' ? null : troubleOf(best);
}

/** A counter is no finer than this: a line drawn a hair longer than it was read is still seen to its end, metres. */
const COUNTER_M = 0.1;

/** Year a stretch was last seen clear over its whole length, or null. */
export function lastSeenClear(findings: readonly PlacedFinding[], fromM: number, toM: number): number | null {
  let year: number | null = null;
  for (const { finding, fromM: a, toM: b } of findings) {
    if (finding.seen !== 'clear' || finding.year === null) continue;
    if (a > fromM + COUNTER_M || b < toM - COUNTER_M) continue;
    year = Math.max(year ?? -Infinity, finding.year);
  }
  return year;
}
