import { type Band, chanceOf, drainIds, type ScoredSite, type TownDrains } from '@rootreach/core';

const RANK: Readonly<Record<Band, number>> = { act: 0, inspect: 1, watch: 2, 'cannot-say': 3, leave: 4 };
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
    if (RANK[band] < RANK[line.band]) line.band = band;
    line.likely = Math.max(line.likely, chanceOf(columns.expected[row] as number));
    line.expected += columns.expected[row] as number;
    line.lengthM += columns.lengthM[row] as number;
  }
  if (line) yield line;
}

/** Positions of a line as they stand in GeoJSON: two hundred thousand lines are too many to make lists of them first. */
function coordinates({ points, ends }: TownDrains, line: number): string {
  const from = line === 0 ? 0 : (ends[line - 1] as number);
  let text = '';
  for (let k = from; k < (ends[line] as number); k++) {
    text += `${k === from ? '' : ','}[${round(points[2 * k] as number)},${round(points[2 * k + 1] as number)}]`;
  }
  return text;
}

/** Every line of a town as one feature with the worst of its stretches: light enough for any map. */
export function* lineFeatures(scored: ScoredSite, drains: TownDrains): Iterable<string> {
  const idOf = drainIds(drains);
  yield '{"type":"FeatureCollection","features":[';
  let before = '\n';
  for (const { number, band, likely, expected, lengthM } of linesOf(scored)) {
    const properties = JSON.stringify({
      line: idOf(number),
      worst_band: band,
      worst_score: Math.round(1000 * likely) / 10,
      expected_entries: Math.round(expected * 1e4) / 1e4,
      length_m: Math.round(lengthM * 10) / 10,
    });
    const geometry = `{"type":"LineString","coordinates":[${coordinates(drains, number)}]}`;
    yield `${before}{"type":"Feature","properties":${properties},"geometry":${geometry}}`;
    before = ',\n';
  }
  yield '\n]}\n';
}
