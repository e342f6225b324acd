import { type Band, type Box, type ScoredSite, SiteView } from '@rootreach/core';
import { type Large, type Strokes, TREE_COLUMNS, type View } from './large.js';

/** Above this a line is one stroke in its worst band: its stretches would be a few pixels each. */
const WHOLE_LINES_FROM_METRES_PER_PIXEL = 0.45;
/** Above this trees would run together. */
const TREES_BELOW_METRES_PER_PIXEL = 1.6;
const MOST_TREES = 12_000;
/** A line shorter than this on the screen is drawn from end to end. */
const STRAIGHT_BELOW_PIXELS = 6;
const METRES_PER_DEGREE = 111_000;

const BANDS: readonly Band[] = ['leave', 'cannot-say', 'watch', 'inspect', 'act'];

/** Strokes while they are put together. */
class Pen {
  private readonly points: number[] = [];
  private readonly starts: number[] = [];

  draw(path: readonly (readonly number[])[]): void {
    this.starts.push(this.points.length / 2);
    for (const [lon, lat] of path) this.points.push(lon as number, lat as number);
  }

  strokes(): Strokes {
    return { points: Float64Array.from(this.points), starts: Int32Array.from(this.starts) };
  }
}

/** The path, or only its ends where it would be seen as a speck. */
function simplified(
  path: readonly (readonly number[])[],
  leastDegrees: number,
): readonly (readonly number[])[] {
  const [first, last] = [path[0], path.at(-1)];
  if (!first || !last || path.length === 2) return path;
  const across = Math.max(
    Math.abs((last[0] as number) - (first[0] as number)),
    Math.abs((last[1] as number) - (first[1] as number)),
  );
  return across < leastDegrees ? [first, last] : path;
}

/** A large site as the worker holds it: drawn part by part. */
export class Town {
  private readonly site: SiteView;
  readonly large: Large;

  constructor(scored: ScoredSite) {
    this.site = new SiteView(scored);
    this.large = { bounds: this.site.bounds };
  }

  /** @param metresPerPixel scale at which it will be drawn. */
  view(box: Box, metresPerPixel: number): View {
    const pens = Object.fromEntries(BANDS.map((band) => [band, new Pen()])) as Record<Band, Pen>;
    const whole = metresPerPixel > WHOLE_LINES_FROM_METRES_PER_PIXEL;
    const least = (STRAIGHT_BELOW_PIXELS * metresPerPixel) / METRES_PER_DEGREE;
    for (const line of this.site.linesIn(box)) {
      if (whole) pens[this.site.worstOf(line)].draw(simplified(this.site.pathOf(line), least));
      else for (const { band, coordinates } of this.site.stretchesOf(line)) pens[band].draw(coordinates);
    }
    const strokes = Object.fromEntries(BANDS.map((band) => [band, pens[band].strokes()]));
    return { box, strokes: strokes as View['strokes'], trees: this.trees(box, metresPerPixel) };
  }

  private trees(box: Box, metresPerPixel: number): Float64Array {
    if (metresPerPixel > TREES_BELOW_METRES_PER_PIXEL) return new Float64Array(0);
    const found = this.site.treesIn(box, MOST_TREES);
    const columns = new Float64Array(found.length * TREE_COLUMNS);
    found.forEach(({ lon, lat, stemDiameterM, driplineM, reachM }, i) => {
      columns.set([lon, lat, stemDiameterM / 2, driplineM, reachM], i * TREE_COLUMNS);
    });
    return columns;
  }

  nearest(lon: number, lat: number, withinM: number): string | null {
    return this.site.nearest([lon, lat], withinM);
  }

  around(id: string, beside: number): ReturnType<SiteView['around']> {
    return this.site.around(id, beside);
  }
}

/** Columns of a view that can be handed over instead of copied. */
export const columnsOf = ({ strokes, trees }: View): ArrayBuffer[] =>
  [trees, ...BANDS.flatMap((band) => [strokes[band].points, strokes[band].starts])].map(
    ({ buffer }) => buffer as ArrayBuffer,
  );
