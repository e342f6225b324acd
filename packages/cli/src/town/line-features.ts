import { type Band, closedFormChance, pathIn, type ScoredSite, type TownDrains } from '@rootreach/core';

const WORST_FIRST: readonly Band[] = ['act', 'inspect', 'watch', 'cannot-say', 'leave'];
/** A tenth of a metre: enough for a map of a town. */
const DEGREES = 1e6;

const round = (value: number): number => Math.round(value * DEGREES) / DEGREES;

interface Line {
  number: number;
  band: Band;
  likely: number;
  expected: number;
  lengthM: number;
}

function* linesOf(scored: ScoredSite): Iterable<Line> {
  const { columns } = scored;
  let line: Line | null = null;
  for (let row = 0; row < columns.count; row++) {
    const number = columns.line[row] as number;
    if (line === null || line.number !== number) {
      if (line !== null) yield line;
      line = { number, band: 'leave', likely: 0, expected: 0, lengthM: 0 };
    }
    const band = scored.bandOf(row);
    if (WORST_FIRST.indexOf(band) < WORST_FIRST.indexOf(line.band)) line.band = band;
    line.likely = Math.max(line.likely, closedFormChance(columns, row).likely);
    line.expected += columns.expected[row] as number;
    line.lengthM += columns.lengthM[row] as number;
  }
  if (line) yield line;
}

/** Every line of a town as one feature with the worst of its stretches: light enough for any map. */
export function* lineFeatures(scored: ScoredSite, drains: TownDrains): Iterable<string> {
  yield '{"type":"FeatureCollection","features":[';
  let before = '\n';
  for (const { number, band, likely, expected, lengthM } of linesOf(scored)) {
    const feature = {
      type: 'Feature',
      properties: {
        line: scored.site.drains[number]?.id ?? '',
        worst_band: band,
        worst_score: Math.round(1000 * likely) / 10,
        expected_entries: Math.round(expected * 1e4) / 1e4,
        length_m: Math.round(lengthM * 10) / 10,
      },
      geometry: {
        type: 'LineString',
        coordinates: pathIn(drains, number).map(([lon, lat]) => [round(lon), round(lat)]),
      },
    };
    yield `${before}${JSON.stringify(feature)}`;
    before = ',\n';
  }
  yield '\n]}\n';
}
