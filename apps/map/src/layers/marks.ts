import type { FittingType } from '@rootreach/core';

/** Our own small marks for fittings, drawn in a box of 20 by 20. `solid` parts are filled. */
export const marks: Readonly<Record<FittingType, { readonly lines: string; readonly solid?: string }>> = {
  basin: { lines: 'M4 4h12v12h-12zM7.5 4v12M12.5 4v12' },
  cleanout: { lines: 'M10 4a6 6 0 1 0 .01 0z', solid: 'M10 7.5a2.5 2.5 0 1 0 .01 0z' },
  downspout: { lines: 'M5 3.5h10v6l-5 7-5-7z' },
  outlet: { lines: 'M10 3.5v8', solid: 'M4.5 10h11l-5.5 7z' },
  wye: { lines: 'M10 17v-7M10 10l-5.5-6M10 10l5.5-6' },
  tee: { lines: 'M10 17v-11M4 6h12' },
  bend: { lines: 'M5 16a11 11 0 0 1 11-11' },
  coupling: { lines: 'M7 4.5v11M13 4.5v11' },
  reducer: { lines: 'M4.5 4.5v11l11-3v-5z' },
  cap: { lines: 'M14.5 4v12', solid: 'M14.5 6a4 4 0 0 0 0 8z' },
};
