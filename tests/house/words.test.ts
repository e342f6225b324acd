import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { bibliography } from '../../packages/core/src/sources/bibliography.js';
import { boreDepthM, boringTable } from '../../packages/core/src/tables/boring.js';
import { drainClearance } from '../../packages/core/src/tables/drain-clearance.js';
import { fallLimits, groundLimits } from '../../packages/core/src/tables/fall-limits.js';
import { harmLimits } from '../../packages/core/src/tables/harm-limits.js';
import { jointTable } from '../../packages/core/src/tables/joints.js';
import { judgement, waterJudgement } from '../../packages/core/src/tables/judgement.js';
import { modelConstants } from '../../packages/core/src/tables/model-constants.js';
import { pipeFlow } from '../../packages/core/src/tables/pipe-flow.js';
import { pipeTable } from '../../packages/core/src/tables/pipes.js';
import { runoffTable } from '../../packages/core/src/tables/runoff.js';
import { speciesTable } from '../../packages/core/src/tables/species.js';
import { surveyTable } from '../../packages/core/src/tables/survey.js';
import { everyCitedValue } from '../core/tables/every-cited-value.js';
import { filesUnder, root } from './source-files.js';

const ENDINGS = ['.ts', '.tsx', '.mjs', '.css', '.html', '.md', '.json', '.geojson', '.yml'];
// put together here, so that this file does not hold what it looks for
const MARKS = new RegExp(`\\b(${['TO' + 'DO', 'FIX' + 'ME', 'X' + 'XX', 'HA' + 'CK'].join('|')})\\b`);
const FILLING = new RegExp(`lorem ${'ip' + 'sum'}|not ${'im' + 'plemented'}|coming ${'so' + 'on'}`, 'i');
const SKIPPED = new RegExp(
  `\\b(it|test|describe)\\.(${['sk' + 'ip', 'on' + 'ly', 'to' + 'do', 'fa' + 'ils'].join('|')})\\b`,
);

const read = (name: string) => ({ path: name, text: readFileSync(join(root, name), 'utf8') });
const files = [
  read('README.md'),
  read('DEVELOPERS.md'),
  ...['packages', 'apps', 'tests', 'data'].flatMap((folder) => filesUnder(folder, ENDINGS)),
];
/** A line that stands for a text still to come. */
const STANDS_IN = /^[A-Z]+(?:_[A-Z]+)+$/m;

describe('the words of the project', () => {
  it('hold no marks of unfinished work', () => {
    expect(files.length).toBeGreaterThan(100);
    const marked = files.flatMap((file) => {
      const mark = MARKS.exec(file.text) ?? FILLING.exec(file.text);
      return mark ? [`${file.path}: ${mark[0]}`] : [];
    });
    expect(marked).toEqual([]);
  });

  it('leave nothing to be filled in', () => {
    const waiting = files.filter(({ path, text }) => path.endsWith('.md') && STANDS_IN.test(text));
    expect(waiting.map(({ path }) => path)).toEqual([]);
  });

  it('pass over no test', () => {
    const passedOver = files
      .filter((f) => f.path.startsWith('tests/') && SKIPPED.test(f.text))
      .map((f) => f.path);
    expect(passedOver).toEqual([]);
  });
});

describe('every number of the tables', () => {
  const cited = everyCitedValue({
    boreDepthM,
    boringTable,
    drainClearance,
    fallLimits,
    groundLimits,
    harmLimits,
    jointTable,
    pipeTable,
    modelConstants,
    pipeFlow,
    runoffTable,
    surveyTable,
    species: Object.fromEntries(speciesTable),
  });

  it('names a source that the bibliography knows', () => {
    expect(cited.length).toBeGreaterThan(1000);
    const unknown = cited
      .filter(({ cited: { source } }) => !(source in bibliography))
      .map(({ path }) => path);
    expect(unknown).toEqual([]);
  });

  it('says how it is known, and judgement is never dressed up as a reading', () => {
    const kinds = new Set(cited.map(({ cited: { known } }) => known));
    for (const kind of kinds) expect(['read', 'quoted', 'calculated', 'memory', 'judgement']).toContain(kind);
    const dressed = cited.filter(({ cited: c }) => c.source === 'our-judgement' && c.known !== 'judgement');
    expect(dressed.map(({ path }) => path)).toEqual([]);
  });

  it('or rests on known sources where it is our own choice', () => {
    const unknown = Object.entries({ ...judgement, ...waterJudgement }).flatMap(([name, { restsOn }]) =>
      restsOn.filter((key) => !(key in bibliography)).map((key) => `${name}: ${key}`),
    );
    expect(unknown).toEqual([]);
  });
});
