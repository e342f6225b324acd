/** Texts of the keeping, opening and sharing sites. */
export const keep = {};
