// Lets a seeded share of the mutants through to the tests; which ones depends on the mutant alone, so that a second
// run takes the same. Left-out mutants are reported as invalid and enter no score.
import { createHash } from 'node:crypto';
import { relative } from 'node:path';

const share = Number(process.env['ROOTREACH_MUTATE_SHARE']);
const seed = process.env['ROOTREACH_MUTATE_SEED'];

/** Whether a mutant is drawn: its place, kind and new text make a number in [0, 1). */
function isDrawn({ fileName, location, mutatorName, replacement }) {
  const file = relative(process.cwd(), fileName).replaceAll('\\', '/');
  const place = `${location.start.line}:${location.start.column}-${location.end.line}:${location.end.column}`;
  const digest = createHash('sha256')
    .update(`${seed} ${file} ${place} ${mutatorName} ${replacement}`)
    .digest();
  return digest.readUInt32BE(0) / 2 ** 32 < share;
}

class SampleChecker {
  async init() {}

  async check(mutants) {
    return Object.fromEntries(
      mutants.map((mutant) => [
        mutant.id,
        isDrawn(mutant) ? { status: 'passed' } : { status: 'compileError', reason: 'not in the sample' },
      ]),
    );
  }

  async group(mutants) {
    return [mutants.map(({ id }) => id)];
  }
}

export const strykerPlugins = [{ kind: 'Checker', name: 'sample', injectableClass: SampleChecker }];
