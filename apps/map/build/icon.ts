import { crc32, deflateSync } from 'node:zlib';

/** The mark: a trunk whose roots come down upon a line. In a box of 32. */
const BOX = 32;
const INK = [0x4a, 0x19, 0x42] as const;
const LINE = [0xb0, 0x4e, 0x2a] as const;
const PAPER = [0xf6, 0xf3, 0xea] as const;

type Point = readonly [x: number, y: number];
interface Stroke {
  readonly path: readonly Point[];
  readonly width: number;
  readonly colour: readonly [number, number, number];
}

const STEPS = 16;

function cubic(a: Point, b: Point, c: Point, d: Point): Point[] {
  return Array.from({ length: STEPS + 1 }, (_, i) => {
    const t = i / STEPS;
    const u = 1 - t;
    const along = (k: 0 | 1) =>
      u * u * u * a[k] + 3 * u * u * t * b[k] + 3 * u * t * t * c[k] + t * t * t * d[k];
    return [along(0), along(1)] as const;
  });
}

const STROKES: readonly Stroke[] = [
  {
    path: [
      [2, 22],
      [30, 22],
    ],
    width: 3,
    colour: LINE,
  },
  {
    path: [
      [16, 3],
      [16, 27],
    ],
    width: 2.4,
    colour: INK,
  },
  { path: cubic([16, 12], [16, 18], [7, 17], [7, 25]), width: 2.4, colour: INK },
  { path: cubic([16, 12], [16, 18], [25, 17], [25, 25]), width: 2.4, colour: INK },
];

const hex = (colour: readonly number[]) => `#${colour.map((c) => c.toString(16).padStart(2, '0')).join('')}`;

export function iconSvg(): string {
  const paths = STROKES.map(({ path, width, colour }) => {
    const points = path.map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`).join('L');
    return `<path d="M${points}" fill="none" stroke="${hex(colour)}" stroke-width="${width}" stroke-linecap="round" stroke-linejoin="round"/>`;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${BOX} ${BOX}"><rect width="${BOX}" height="${BOX}" fill="${hex(PAPER)}"/>${paths.join('')}</svg>\n`;
}

function distance([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): number {
  const length2 = (bx - ax) ** 2 + (by - ay) ** 2;
  const t = length2 === 0 ? 0 : ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / length2;
  const k = Math.min(1, Math.max(0, t));
  return Math.sqrt((x - ax - k * (bx - ax)) ** 2 + (y - ay - k * (by - ay)) ** 2);
}

interface Bounded extends Stroke {
  readonly low: Point;
  readonly high: Point;
}

const BOUNDED: readonly Bounded[] = STROKES.map((stroke) => {
  const side = (k: 0 | 1, most: (...values: number[]) => number) => most(...stroke.path.map((at) => at[k]));
  return {
    ...stroke,
    low: [side(0, Math.min) - 2, side(1, Math.min) - 2],
    high: [side(0, Math.max) + 2, side(1, Math.max) + 2],
  };
});

function fromStroke(at: Point, { path, width, low, high }: Bounded): number {
  if (at[0] < low[0] || at[1] < low[1] || at[0] > high[0] || at[1] > high[1]) return Infinity;
  let nearest = Infinity;
  for (let i = 1; i < path.length; i++) {
    nearest = Math.min(nearest, distance(at, path[i - 1] as Point, path[i] as Point));
  }
  return nearest - width / 2;
}

/** Colour of one pixel: each stroke over the one before, its edge one pixel soft. */
function colourAt(at: Point, pixel: number): number[] {
  return BOUNDED.reduce<number[]>(
    (below, stroke) => {
      const cover = Math.min(1, Math.max(0, 0.5 - fromStroke(at, stroke) / pixel));
      return below.map((c, k) => c + cover * ((stroke.colour[k] as number) - c));
    },
    [...PAPER],
  );
}

function chunk(type: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.length);
  const sum = Buffer.alloc(4);
  sum.writeUInt32BE(crc32(body) >>> 0);
  return Buffer.concat([length, body, sum]);
}

/**
 * The icon as a PNG (ISO/IEC 15948): 8-bit RGB, no filter.
 * @param margin share of the picture left free on each side.
 */
export function iconPng(size: number, margin: number): Buffer {
  const pixel = BOX / size / (1 - 2 * margin);
  const rows = Buffer.alloc(size * (1 + 3 * size));
  for (let y = 0; y < size; y++) {
    for (let x = 0; x < size; x++) {
      const place = (k: number) => (k + 0.5 - margin * size) * pixel;
      const colour = colourAt([place(x), place(y)], pixel);
      rows.set(colour.map(Math.round), y * (1 + 3 * size) + 1 + 3 * x);
    }
  }
  const header = Buffer.alloc(13);
  header.writeUInt32BE(size, 0);
  header.writeUInt32BE(size, 4);
  header.set([8, 2, 0, 0, 0], 8);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  const parts = [
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(rows, { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ];
  return Buffer.concat([signature, ...parts]);
}
