// One project for each fault: the sources with that fault, held against the test that must fail by it.
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';
import type { Reporter } from 'vitest/reporters';
import { alias } from '../vitest.config.js';
import { type KnownBad, knownBad } from './known-bad.js';

const root = fileURLToPath(new URL('../..', import.meta.url)).replaceAll('\\', '/');

const withFault = ({ file, from, to }: KnownBad): Plugin => ({
  name: 'known-bad',
  enforce: 'pre',
  transform(code, id) {
    if (id !== `${root}packages/core/src/${file}`) return null;
    if (code.split(from).length !== 2) throw new Error(`'${from}' does not stand once in ${file}`);
    return code.replace(from, () => to);
  },
});

/** Prints, fault by fault, how each of its tests ended: 'passed', or the name of what it failed by. */
const endings: Reporter = {
  onTestRunEnd(modules) {
    const found = modules.map(({ project, children }) => [
      project.name,
      [...children.allTests()].map((test) => test.result().errors?.[0]?.name ?? test.result().state),
    ]);
    console.log(JSON.stringify(Object.fromEntries(found)));
  },
};

export default defineConfig({
  root,
  test: {
    root,
    maxWorkers: 1,
    reporters: [endings],
    projects: knownBad.map((fault) => ({
      plugins: [withFault(fault)],
      resolve: { alias },
      test: { name: fault.name, root, include: [`tests/${fault.test}`], isolate: false },
    })),
  },
});
