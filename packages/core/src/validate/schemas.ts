import { z } from 'zod';
import { type NamedQuantity, namesOf, quantities } from './quantity-names.js';

const text = z.string().optional();
const idText = z.union([z.string(), z.number()]).optional();
const flag = z.boolean().optional();
/** Nothing on a lot or under a street measures a million of its unit; volumes and sums of more would overflow (judgement). */
const MOST = 1e6;
const MOST_AREA = 1e9;
const positive = z.number().positive().max(MOST).optional();
const notNegative = z.number().min(0).max(MOST).optional();
/** Shorter than a hand is no pipe, and would make a joint of every millimetre (judgement). */
const pieceLength = z.number().min(0.1).max(MOST).optional();
/** ISO 8601 date, or a year. */
const date = z
  .union([
    z.number().int().min(1000).max(2999),
    z.string().regex(/^\d{4}(-\d{2}(-\d{2}(T.*)?)?)?$/, 'an ISO date or a year'),
  ])
  .optional();

function each(quantity: NamedQuantity, schema: z.ZodType): Record<string, z.ZodType> {
  return Object.fromEntries(namesOf(quantity).map((name) => [name, schema]));
}

const tree = z.looseObject({
  id: idText,
  species: text,
  condition: text,
  note: text,
  street: idText,
  planted: date,
  felled: date,
  ...each(quantities.dbh, positive),
  ...each(quantities.girth, positive),
  ...each(quantities.stems, z.array(z.number().positive().max(MOST)).min(1).max(50).optional()),
  ...each(quantities.canopyRadius, positive),
  ...each(quantities.height, positive),
});

const drain = z.looseObject({
  id: idText,
  name: text,
  street: idText,
  material: text,
  perforated: flag,
  wrapped: flag,
  joint: z
    .enum(['none', 'snap', 'taped', 'gasket', 'solvent', 'band', 'mortar', 'open', 'welded'])
    .optional(),
  sealed: flag,
  seal_mpa: notNegative,
  installed: date,
  dug: date,
  cut: date,
  flow: z.enum(['as-drawn', 'reversed']).optional(),
  carries: z.enum(['storm', 'foul']).optional(),
  wet: z.enum(['dry', 'often', 'standing']).optional(),
  ...each(quantities.size, positive),
  ...each(quantities.piece, pieceLength),
  ...each(quantities.depthStart, notNegative),
  ...each(quantities.depthEnd, notNegative),
  ...each(quantities.serves, z.number().min(0).max(MOST_AREA).optional()),
});

const fitting = z.looseObject({
  id: idText,
  type: z.enum([
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
  sealed: flag,
  drain: idText,
});

const finding = z.looseObject({
  id: idText,
  drain: z.union([z.string(), z.number()]),
  from: idText,
  direction: z.enum(['upstream', 'downstream']).optional(),
  seen: z.enum(['clear', 'fine', 'mass', 'full', 'crushed', 'sag', 'offset']),
  blocked_pct: z.number().min(0).max(100).optional(),
  entries: z.number().int().min(1).max(MOST).optional(),
  photo: text,
  date,
  ...each(quantities.at, notNegative),
  ...each(quantities.to, notNegative),
});

const obstacle = z.looseObject({
  id: idText,
  name: text,
  type: z.enum(['building', 'paving', 'pool', 'wall', 'utility', 'boundary']),
});

const barrier = z.looseObject({ id: idText, installed: date, ...each(quantities.barrierDepth, positive) });

const level = z.looseObject({
  id: idText,
  ...each(quantities.elevation, z.number().min(-MOST).max(MOST).optional()),
});

/** What the properties of each kind of feature may hold; other properties pass untouched. */
export const featureSchemas = { tree, drain, fitting, finding, obstacle, barrier, level } as const;

/** What a feature of the site file can be: its `kind`. */
export type FeatureKind = keyof typeof featureSchemas;

/** Collection member `rootreach`. */
export const siteInfoSchema = z.looseObject({
  schema: z.number().int().min(1).optional(),
  name: text,
  invented: flag,
  date,
  units: z.enum(['us', 'metric']).optional(),
  soil: z.enum(['sand', 'loam', 'clay']).optional(),
  rain_mm_h: positive,
  biome: text,
  protection: z
    .enum([
      'trunk-multiple',
      'trunk-multiple-min-2m',
      'foot-per-inch',
      'foot-and-half-per-inch',
      'tolerance-and-age',
    ])
    .optional(),
  notes: text,
});

/** JSON Schema of the properties of each kind, and of the collection member. */
export function siteFileSchemas(): Record<FeatureKind | 'rootreach', unknown> {
  const made = Object.entries({ ...featureSchemas, rootreach: siteInfoSchema }).map(([kind, schema]) => [
    kind,
    z.toJSONSchema(schema),
  ]);
  return Object.fromEntries(made);
}
