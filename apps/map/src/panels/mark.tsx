import type { FittingType } from '@rootreach/core';
import { marks } from '../layers/marks.js';

/** The strokes of one fitting's mark, for an SVG with a box of 20 by 20. */
export function Mark({ type }: { readonly type: FittingType }) {
  const { lines, solid } = marks[type];
  return (
    <>
      <path class="mark-back" d={lines} />
      <path class="mark-line" d={lines} />
      {solid && <path class="mark-solid" d={solid} />}
    </>
  );
}
