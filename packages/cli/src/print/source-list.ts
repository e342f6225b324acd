import {
  bibliography,
  jointRow,
  judgement,
  pipeRow,
  type SegmentResult,
  type Site,
  type SourceKey,
  speciesRow,
} from '@rootreach/core';

/** How a number is known, said plainly. */
const KNOWN = {
  read: 'read',
  quoted: 'quoted in other works',
  calculated: 'worked out from its data',
  memory: 'from memory',
  judgement: 'our judgement',
} as const;

export interface SourceUse {
  readonly key: SourceKey;
  readonly known: keyof typeof KNOWN;
  readonly usedFor: readonly string[];
}

type Add = (usedFor: string, key: SourceKey, known?: SourceUse['known']) => void;

function addTrees(add: Add, segment: SegmentResult, site: Site): void {
  if (segment.trees.length === 0) return;
  add('how far roots reach', 'day-2010');
  add('how far roots reach', 'gilman-1988-spread');
  add('circle of 12 trunk diameters', 'bs-5837-2012');
  add('circle of the structural roots', 'as-4970-2009');
  for (const { id } of segment.trees) {
    const tree = site.trees.find((candidate) => candidate.id === id);
    if (tree === undefined) continue;
    const row = speciesRow(tree.species.key);
    add(`vigour of ${row.common[0]}`, row.vigour.source, row.vigour.known);
    if (tree.canopyRadiusM === null && row.crownEquation !== null) {
      add(`canopy of ${row.common[0]}`, row.crownEquation.source, row.crownEquation.known);
    }
  }
}

function addLine(add: Add, segment: SegmentResult, site: Site): void {
  const { joints, slots, crush } = segment.expectedEntries;
  const drain = site.drains.find(({ id }) => id === segment.drainId);
  const pipe = pipeRow(segment.material);
  const joint = jointRow(drain?.joint ?? pipe.joint);
  const judged = (usedFor: string, keys: readonly SourceKey[]): void => {
    add(usedFor, 'our-judgement');
    for (const key of keys) add(usedFor, key);
  };
  if (joints > 0) {
    judged('rate of entry at joints', judgement.entryRatePerJointYear.restsOn);
    add(`openness of a ${joint.name}`, joint.factor.source, joint.factor.known);
  }
  if (slots > 0) judged('rate of entry at slots', judgement.perforatedUnwrappedPerM.restsOn);
  if (crush > 0) {
    judged('rate of crushing', judgement.crushRatePerMetreYear.restsOn);
    add(`stiffness of ${pipe.name}`, pipe.stiffness.source, pipe.stiffness.known);
  }
  if (drain !== undefined && drain.pieceM === null) {
    add(`length of pieces of ${pipe.name}`, pipe.pieceM.source, pipe.pieceM.known);
  }
  if (drain?.carries === 'foul') add('foul water draws roots', 'torres-2017');
  judged('how fast roots come back', judgement.regrowthMetresPerYear.restsOn);
}

/** The sources behind one segment's numbers, each once, with what it is used for. */
export function sourcesBehind(segment: SegmentResult, site: Site): SourceUse[] {
  const uses = new Map<string, { key: SourceKey; known: SourceUse['known']; usedFor: Set<string> }>();
  const add: Add = (usedFor, key, known = bibliography[key].known) => {
    const id = `${key} ${known}`;
    const use = uses.get(id) ?? { key, known, usedFor: new Set<string>() };
    use.usedFor.add(usedFor);
    uses.set(id, use);
  };
  addTrees(add, segment, site);
  addLine(add, segment, site);
  return [...uses.values()].map((use) => ({ ...use, usedFor: [...use.usedFor] }));
}

function authorsIn(authors: string): string {
  const names = authors.split(';').map((name) => name.split(',')[0]?.trim() ?? '');
  return names.length > 2 ? `${names[0]} and others` : names.join(' and ');
}

/** `Day and others 2010, Contemporary concepts ...: for how far roots reach (read)`. */
export function wordSource({ key, known, usedFor }: SourceUse): string {
  const source: { title: string; authors?: string; year?: number; where: string } = bibliography[key];
  const uses = usedFor.join(', ');
  if (key === 'our-judgement') return `Our judgement: ${uses}. The range takes in how far off it may be.`;
  const { title, where, authors, year = '' } = source;
  const by = authors === undefined ? '' : `${`${authorsIn(authors)} ${year}`.trim()}, `;
  return `${by}${title}, ${where}: for ${uses} (${KNOWN[known]})`;
}

/** The same for scripts. */
export const plainSources = (uses: readonly SourceUse[]) =>
  uses.map((use) => ({ ...use, title: bibliography[use.key].title, where: bibliography[use.key].where }));
