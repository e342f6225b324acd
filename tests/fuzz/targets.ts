import { readFileSync } from 'node:fs';
import type { Case } from './case.js';
import type { Chance } from './chance.js';
import { mutatedBytes } from './mutate-bytes.js';
import { mutatedJson } from './mutate-json.js';
import { mutatedTable } from './mutate-table.js';
import { COLUMNS, GPX, GRID, KML, LINE_ROWS, priceRows, TREE_ROWS, TWO_LINES, YARD } from './seeds.js';
import { anyOptions } from './words.js';

type Content = string | Uint8Array;

/** Now and then the bytes are damaged as well. */
function damaged(content: string, chance: Chance, share = 0.15): Content {
  return chance.happens(share) ? mutatedBytes(new TextEncoder().encode(content), chance) : content;
}

const siteOf = (chance: Chance): unknown => (chance.happens(0.7) ? YARD : TWO_LINES);
const anySite = (chance: Chance): Content =>
  chance.happens(0.07)
    ? damaged(JSON.stringify(siteOf(chance)), chance, 1)
    : damaged(mutatedJson(siteOf(chance), chance), chance);
const soundSite = (chance: Chance): string => JSON.stringify(siteOf(chance));

/** Ways to ask for the result of each command. */
const FORMS: Readonly<Record<string, readonly (readonly string[])[]>> = {
  check: [['--json'], []],
  rank: [['--json'], ['--csv'], ['--geojson'], []],
  explain: [['--json'], []],
  water: [['--json'], ['--csv'], []],
  season: [['--json'], ['--csv'], ['--ics'], []],
  decide: [['--json'], ['--csv'], []],
  quote: [['--json'], ['--csv'], []],
  route: [['--json'], ['--geojson'], []],
  page: [['--json'], [], ['--lang=es'], ['--crew'], ['--crew', '--lang=es']],
  learn: [['--json'], [], ['--out=@/out/model.json'], ['--picture=@/out/learned.svg']],
  town: [['--json'], [], ['--out=@/out', '--segments']],
  convert: [[], ['--json'], ['--out=@/out/site.geojson'], ['--map=@/out/columns.json']],
};

function onSite(command: string, chance: Chance, content: Content): Case {
  const fixed = command === 'town' ? ['--threads=0'] : command === 'route' ? ['--from=B1', '--to=O1'] : [];
  const options = chance.happens(0.5) ? anyOptions(command, chance) : [];
  return {
    argv: [command, '@/site.geojson', ...fixed, ...chance.pick(FORMS[command] ?? [[]]), ...options],
    files: { 'site.geojson': content },
  };
}

const withSite =
  (...commands: string[]) =>
  (chance: Chance): Case =>
    onSite(chance.pick(commands), chance, anySite(chance));

function tables(chance: Chance): Case {
  const command = chance.pick(['convert', 'convert', 'check', 'rank', 'town']);
  const trees = damaged(mutatedTable(TREE_ROWS, chance), chance);
  const lines = damaged(mutatedTable(LINE_ROWS, chance), chance);
  const both = command !== 'convert' || chance.happens(0.3);
  const [first, second] = chance.happens(0.5) ? ['trees.csv', 'lines.csv'] : ['lines.csv', 'trees.csv'];
  return {
    argv: [
      command,
      `@/${first}`,
      ...(both ? [`@/${second}`] : []),
      ...(command === 'town' ? ['--threads=0'] : []),
      ...chance.pick(FORMS[command] ?? [[]]),
      ...(chance.happens(0.2) ? anyOptions(command, chance) : []),
    ],
    files: { 'trees.csv': trees, 'lines.csv': lines },
  };
}

/** GeoJSON, XML and lists of features as other programs write them. */
function foreign(chance: Chance): Case {
  const [name, content] = chance.pick([
    () => ['x.kml', damaged(KML, chance, 1)],
    () => ['x.gpx', damaged(GPX, chance, 1)],
    () => ['x.geojson', damaged(mutatedJson(townFeatures, chance), chance)],
    () => [
      'x.ndjson',
      damaged(townFeatures.features.map((one) => mutatedJson(one, chance, 2)).join('\n'), chance),
    ],
  ] as (() => [string, Content])[])();
  const command = chance.pick(['convert', 'check', 'rank']);
  return {
    argv: [command, `@/${name}`, ...chance.pick(FORMS[command] ?? [[]])],
    files: { [name]: content },
  };
}

const townFeatures = {
  type: 'FeatureCollection',
  features: TREE_ROWS.slice(1).map((row) => ({
    type: 'Feature',
    properties: Object.fromEntries((TREE_ROWS[0] ?? []).map((name, i) => [name, row[i] ?? ''])),
    geometry: { type: 'Point', coordinates: [Number(row[7]), Number(row[8])] },
  })),
};

const FINDINGS = JSON.parse(
  readFileSync(new URL('../../data/findings/kettle-lane.geojson', import.meta.url), 'utf8'),
) as { features: { properties: { kind: string } }[] };
const ROOTED = { ...FINDINGS, features: FINDINGS.features.slice(0, 40) };

function findings(chance: Chance): Case {
  const content = damaged(
    mutatedJson(chance.happens(0.03) ? ROOTED : siteOf(chance), chance, 8),
    chance,
    0.05,
  );
  return onSite(chance.pick(['learn', 'rank', 'check', 'season']), chance, content);
}

/** @param model A sound model's text. */
const learnedModel =
  (model: string) =>
  (chance: Chance): Case => {
    const made = onSite(chance.pick(['rank', 'rank', 'explain', 'season']), chance, soundSite(chance));
    const content = damaged(mutatedJson(JSON.parse(model), chance), chance, 0.1);
    return { argv: [...made.argv, '--model=@/model.json'], files: { ...made.files, 'model.json': content } };
  };

const PRICES = priceRows();

function prices(chance: Chance): Case {
  const made = onSite(chance.pick(['quote', 'quote', 'decide']), chance, JSON.stringify(YARD));
  const content = damaged(mutatedTable(PRICES, chance), chance, 0.1);
  return { argv: [...made.argv, '--prices=@/prices.csv'], files: { ...made.files, 'prices.csv': content } };
}

function columnMap(chance: Chance): Case {
  const command = chance.pick(['convert', 'convert', 'check']);
  return {
    argv: [command, '@/trees.csv', '--map=@/columns.json', ...chance.pick([[], ['--json']])],
    files: {
      'trees.csv': mutatedTable(TREE_ROWS, chance),
      'columns.json': damaged(mutatedJson(COLUMNS, chance), chance),
    },
  };
}

function options(chance: Chance): Case {
  const command = chance.pick(Object.keys(FORMS));
  const made = onSite(command, chance, JSON.stringify(YARD));
  return { ...made, argv: [...made.argv, ...anyOptions(command, chance, 5)] };
}

function ground(chance: Chance): Case {
  const made = onSite('route', chance, JSON.stringify(YARD));
  return {
    argv: [...made.argv, '--ground=@/ground.asc'],
    files: { ...made.files, 'ground.asc': damaged(GRID, chance, 1) },
  };
}

export interface Target {
  readonly name: string;
  /** Weight among the targets. */
  readonly share: number;
  readonly make: (chance: Chance) => Case;
}

/** All targets; the shares follow what a case costs. @param model Text of a learned model that is sound. */
export const targetsWith = (model: string): readonly Target[] => [
  { name: 'check', share: 300, make: withSite('check') },
  { name: 'rank', share: 180, make: withSite('rank') },
  { name: 'answers', share: 90, make: withSite('explain', 'water', 'season') },
  { name: 'works', share: 6, make: withSite('decide', 'quote', 'page') },
  { name: 'route', share: 2, make: withSite('route') },
  { name: 'town', share: 25, make: withSite('town') },
  { name: 'tables', share: 230, make: tables },
  { name: 'foreign', share: 50, make: foreign },
  { name: 'findings', share: 25, make: findings },
  { name: 'model', share: 130, make: learnedModel(model) },
  { name: 'prices', share: 5, make: prices },
  { name: 'columns', share: 150, make: columnMap },
  { name: 'options', share: 6, make: options },
  { name: 'ground', share: 1, make: ground },
];
