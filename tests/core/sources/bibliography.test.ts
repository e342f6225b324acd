import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { relations } from '../../../packages/core/src/roots/relations.js';
import { bibliography } from '../../../packages/core/src/sources/bibliography.js';
import { cite } from '../../../packages/core/src/sources/cited.js';
import { waterRelations } from '../../../packages/core/src/water/relations.js';

const packages = join(dirname(fileURLToPath(import.meta.url)), '../../../packages');

/** All TypeScript sources of the packages but the bibliography itself. */
function sources(): string[] {
  return readdirSync(packages).flatMap((name) => {
    const folder = join(packages, name, 'src');
    try {
      return readdirSync(folder, { recursive: true, encoding: 'utf8' })
        .filter((path) => path.endsWith('.ts') && !path.endsWith('bibliography.ts'))
        .map((path) => readFileSync(join(folder, path), 'utf8'));
    } catch {
      return []; // a package without TypeScript
    }
  });
}

const text = sources().join('\n');

describe('bibliography', () => {
  it('holds no source that no code uses', () => {
    const unused = Object.keys(bibliography).filter((key) => !text.includes(`'${key}'`));
    expect(unused).toEqual([]);
  });

  it('knows every key that stands where a source must stand', () => {
    const places = [
      ...text.matchAll(
        /\bcite\(\s*[^()]*?(?:\([^()]*\)[^()]*?)*,\s*'([a-z0-9.-]+)',\s*'(?:read|quoted|calculated|memory|judgement)'/g,
      ),
      ...text.matchAll(/\bsource:\s*'([a-z0-9.-]+)'/g),
      ...text.matchAll(/\blisted\(\s*\d,\s*'([a-z0-9.-]+)'/g),
    ];
    expect(places.length).toBeGreaterThan(50);
    const unknown = places.map((match) => match[1] ?? '').filter((key) => !(key in bibliography));
    expect(unknown).toEqual([]);
  });

  it('says of every source what and where it is, and of none a page address', () => {
    for (const source of Object.values(bibliography)) {
      expect(source.title.length).toBeGreaterThan(3);
      expect(source.where.length).toBeGreaterThan(3);
      expect(JSON.stringify(source)).not.toMatch(/https?:|www\.|localhost|@/);
    }
  });
});

describe('relations', () => {
  it.each([...relations, ...waterRelations])('$what: $source', ({ what, source, known }) => {
    expect(what.length).toBeGreaterThan(3);
    expect(bibliography).toHaveProperty([source]);
    expect(['read', 'quoted', 'calculated', 'memory', 'judgement']).toContain(known);
    // what is our own choice, and nothing else, is a judgement
    expect(known === 'judgement').toBe(source === 'our-judgement');
  });

  it('are each told once', () => {
    const told = [...relations, ...waterRelations].map(({ what }) => what);
    expect(new Set(told).size).toBe(told.length);
  });
});

describe('cite', () => {
  it('keeps value, source, how known and place together', () => {
    expect(cite(3, 'our-judgement', 'judgement', 'why')).toEqual({
      value: 3,
      source: 'our-judgement',
      known: 'judgement',
      place: 'why',
    });
  });

  it('leaves the place out when there is none', () => {
    expect('place' in cite(3, 'our-judgement', 'judgement')).toBe(false);
  });
});
