/** Where a little GeoTIFF lies and what its heights are; numbers of keys and tags as in GeoTIFF 1.1 and TIFF 6.0. */
export interface LittleTiff {
  readonly width: number;
  readonly heights: readonly number[];
  /** Tag 33550: size of a cell, x and y. */
  readonly scale: readonly [number, number];
  /** Tag 33922: column, row, and the coordinates there. */
  readonly tie: readonly [column: number, row: number, x: number, y: number];
  /** Tag 34735: short values by key. */
  readonly keys: Readonly<Record<number, number>>;
  readonly noData?: string;
  /** Tag 34264 in place of scale and tie: 16 numbers. */
  readonly matrix?: readonly number[];
}

interface Field {
  readonly tag: number;
  readonly type: 2 | 3 | 4 | 12;
  readonly values: readonly number[];
}

const SIZES = { 2: 1, 3: 2, 4: 4, 12: 8 } as const;

/** A TIFF of one strip of 32-bit floats, little-endian, written byte by byte. */
export function littleTiff(tiff: LittleTiff): Uint8Array {
  const { width, heights, scale, tie, keys, noData, matrix } = tiff;
  const height = heights.length / width;
  const shorts = Object.entries(keys).flatMap(([key, value]) => [Number(key), 0, 1, value]);
  const place: Field[] = matrix
    ? [{ tag: 34264, type: 12, values: matrix }]
    : [
        { tag: 33550, type: 12, values: [...scale, 0] },
        { tag: 33922, type: 12, values: [tie[0], tie[1], 0, tie[2], tie[3], 0] },
      ];
  const text = [...(noData ?? ''), '\0'].map((letter) => letter.charCodeAt(0));
  const short = (tag: number, value: number): Field => ({ tag, type: 3, values: [value] });
  const stripAt = 8;
  const missing: Field[] = noData === undefined ? [] : [{ tag: 42113, type: 2, values: text }];
  const all: Field[] = [
    short(256, width),
    short(257, height),
    short(258, 32),
    short(259, 1),
    short(262, 1),
    { tag: 273, type: 4, values: [stripAt] },
    short(277, 1),
    short(278, height),
    { tag: 279, type: 4, values: [4 * heights.length] },
    short(339, 3),
    ...place,
    { tag: 34735, type: 3, values: [1, 1, 0, Object.keys(keys).length, ...shorts] },
    ...missing,
  ];
  const fields = all.sort((a, b) => a.tag - b.tag);
  const directoryAt = stripAt + 4 * heights.length;
  let spareAt = directoryAt + 2 + 12 * fields.length + 4;
  const view = new DataView(new ArrayBuffer(spareAt + fields.length * 8 * 40));
  view.setUint16(0, 0x4949, true);
  view.setUint16(2, 42, true);
  view.setUint32(4, directoryAt, true);
  heights.forEach((z, i) => {
    view.setFloat32(stripAt + 4 * i, z, true);
  });
  view.setUint16(directoryAt, fields.length, true);
  const put = (type: Field['type'], at: number, value: number): void => {
    if (type === 2) view.setUint8(at, value);
    else if (type === 3) view.setUint16(at, value, true);
    else if (type === 4) view.setUint32(at, value, true);
    else view.setFloat64(at, value, true);
  };
  fields.forEach(({ tag, type, values }, i) => {
    const at = directoryAt + 2 + 12 * i;
    view.setUint16(at, tag, true);
    view.setUint16(at + 2, type, true);
    view.setUint32(at + 4, values.length, true);
    const bytes = SIZES[type] * values.length;
    const to = bytes <= 4 ? at + 8 : spareAt;
    values.forEach((value, k) => {
      put(type, to + SIZES[type] * k, value);
    });
    if (bytes <= 4) return;
    view.setUint32(at + 8, spareAt, true);
    spareAt += bytes + (bytes % 2);
  });
  return new Uint8Array(view.buffer.slice(0, spareAt));
}
