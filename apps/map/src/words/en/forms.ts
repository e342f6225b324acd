/** Texts of the entry forms. */
export const forms = {};
