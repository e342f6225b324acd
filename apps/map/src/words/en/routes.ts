/** Texts of the new lines. */
export const routes = {};
