/** Texts of the drawing tools. */
export const draw = {};
