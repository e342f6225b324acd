import { readFileSync } from 'node:fs';
import type { Plugin } from 'vite';

/**
 * Puts a CommonJS package's own text, byte for byte, into the chunk that was made of it, so that anyone can
 * replace that file by another version of the package, as its licence asks.
 */
export function unmodifiedChunk(chunkName: string): Plugin {
  return {
    name: 'unmodified-chunk',
    apply: 'build',
    generateBundle(_options, bundle) {
      for (const chunk of Object.values(bundle)) {
        if (chunk.type !== 'chunk' || chunk.name !== chunkName) continue;
        const sources = chunk.moduleIds.filter((id) => id.includes(`/node_modules/${chunkName}/`));
        const [exported] = chunk.exports;
        if (sources.length !== 1 || chunk.exports.length !== 1 || chunk.imports.length > 0) {
          this.error(`${chunkName} is no longer one module with one door`);
        }
        const text = readFileSync(sources[0] as string, 'utf8');
        chunk.code = wrapped(text, exported as string);
      }
    },
  };
}

function wrapped(text: string, exported: string): string {
  return `const held = { exports: {} };
let loaded = false;
function load(module, exports) {
${text}
}
function get() {
  if (!loaded) {
    loaded = true;
    load(held, held.exports);
  }
  return held.exports;
}
export { get as ${exported} };
`;
}
