/** Texts of the year slider, what-if and profile. */
export const answers = {};
