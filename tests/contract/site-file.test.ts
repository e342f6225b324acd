import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { readSite, siteFileSchemas } from '../../packages/core/src/index.js';
import { root } from '../house/source-files.js';

const SITES = ['corner-lot', 'french-drain-plan', 'small-campus'];
const KINDS = ['tree', 'drain', 'fitting', 'finding', 'obstacle', 'barrier', 'level'];

interface JsonSchema {
  readonly $schema?: string;
  readonly type?: string;
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly required?: readonly string[];
  readonly enum?: readonly string[];
}

const schemas = siteFileSchemas() as Record<string, JsonSchema>;
const schema = (kind: string): JsonSchema => schemas[kind] as JsonSchema;

interface SiteText {
  readonly features: readonly { readonly properties: Readonly<Record<string, unknown>> }[];
  readonly rootreach: Readonly<Record<string, unknown>>;
}

const siteText = (name: string): string => readFileSync(`${root}/data/sites/${name}.geojson`, 'utf8');

describe('the schema of the site file', () => {
  it('is there for every kind and for the collection member', () => {
    expect(Object.keys(schemas).sort()).toEqual([...KINDS, 'rootreach'].sort());
    for (const kind of Object.keys(schemas)) {
      expect(schema(kind).$schema).toMatch(/json-schema\.org/);
      expect(schema(kind).type).toBe('object');
      expect(Object.keys(schema(kind).properties ?? {}).length).toBeGreaterThan(1);
    }
  });

  it.each([
    [
      'tree',
      [
        'species',
        'dbh_cm',
        'dbh_in',
        'girth_cm',
        'girth_in',
        'stems_cm',
        'stems_in',
        'canopy_radius_m',
        'canopy_radius_ft',
        'height_m',
        'height_ft',
        'condition',
        'planted',
        'felled',
        'note',
      ],
    ],
    [
      'drain',
      [
        'id',
        'name',
        'material',
        'size_mm',
        'size_in',
        'perforated',
        'wrapped',
        'piece_m',
        'piece_ft',
        'joint',
        'sealed',
        'depth_start_m',
        'depth_start_ft',
        'depth_end_m',
        'depth_end_ft',
        'installed',
        'dug',
        'cut',
        'flow',
        'serves_m2',
        'serves_ft2',
        'wet',
        'street',
      ],
    ],
    ['fitting', ['id', 'type', 'sealed', 'drain']],
    ['finding', ['drain', 'from', 'at_m', 'at_ft', 'to_m', 'to_ft', 'seen', 'blocked_pct', 'date']],
    ['obstacle', ['type', 'name']],
    ['barrier', ['depth_m', 'depth_ft', 'installed']],
    ['level', ['elevation_m', 'elevation_ft']],
    ['rootreach', ['schema', 'name', 'date', 'units', 'soil', 'rain_mm_h', 'biome', 'protection', 'notes']],
  ])('of a %s knows the properties of the contract', (kind, names) => {
    const known = Object.keys(schema(kind).properties ?? {});
    expect(names.filter((name) => !known.includes(name))).toEqual([]);
  });

  it('has the words of the contract', () => {
    expect(schema('fitting').properties?.['type']?.enum).toEqual(
      expect.arrayContaining([
        'wye',
        'tee',
        'bend',
        'coupling',
        'reducer',
        'basin',
        'cleanout',
        'downspout',
        'outlet',
        'cap',
      ]),
    );
    expect(schema('finding').properties?.['seen']?.enum).toEqual(
      expect.arrayContaining(['clear', 'fine', 'mass', 'full', 'crushed', 'sag', 'offset']),
    );
    expect(schema('drain').properties?.['wet']?.enum).toEqual(['dry', 'often', 'standing']);
    expect(schema('drain').properties?.['flow']?.enum).toEqual(['as-drawn', 'reversed']);
    expect(schema('drain').properties?.['joint']?.enum).toEqual(
      expect.arrayContaining([
        'none',
        'snap',
        'taped',
        'gasket',
        'solvent',
        'band',
        'mortar',
        'open',
        'welded',
      ]),
    );
    expect(schema('obstacle').properties?.['type']?.enum).toEqual(
      expect.arrayContaining(['building', 'paving', 'pool', 'wall', 'utility', 'boundary']),
    );
  });

  it('asks for what the contract asks for', () => {
    expect(schema('fitting').required).toContain('type');
    expect(schema('finding').required).toEqual(expect.arrayContaining(['drain', 'seen']));
    expect(schema('obstacle').required).toContain('type');
  });
});

// the published schema itself, read back, is what the files are held against
describe.each(SITES)('the demo site %s', (name) => {
  const site = JSON.parse(siteText(name)) as SiteText;

  it('is right by the published schema', () => {
    const faults = site.features.flatMap(({ properties }, i) => {
      const reader = z.fromJSONSchema(
        schema(String(properties['kind'])) as Parameters<typeof z.fromJSONSchema>[0],
      );
      const { success, error } = reader.safeParse(properties);
      return success ? [] : [`feature ${i}: ${error.message}`];
    });
    expect(faults).toEqual([]);
    const about = z.fromJSONSchema(schema('rootreach') as Parameters<typeof z.fromJSONSchema>[0]);
    expect(about.safeParse(site.rootreach).success).toBe(true);
  });

  it('is read without an error, every feature of it', () => {
    const { issues, counts } = readSite([{ name, text: siteText(name) }]);
    expect(issues.filter((issue) => issue.severity === 'error')).toEqual([]);
    expect(Object.values(counts.features).reduce((sum, n) => sum + n, 0)).toBe(site.features.length);
  });
});

describe('the published schema', () => {
  const reader = (kind: string) => z.fromJSONSchema(schema(kind) as Parameters<typeof z.fromJSONSchema>[0]);

  it('turns down what the reader turns down', () => {
    expect(reader('tree').safeParse({ dbh_cm: -3 }).success).toBe(false);
    expect(reader('drain').safeParse({ wet: 'damp' }).success).toBe(false);
    expect(reader('drain').safeParse({ installed: 'soon' }).success).toBe(false);
    expect(reader('fitting').safeParse({}).success).toBe(false);
  });

  it('lets pass what it does not know', () => {
    expect(reader('tree').safeParse({ dbh_cm: 30, colour: 'green' }).success).toBe(true);
  });
});
