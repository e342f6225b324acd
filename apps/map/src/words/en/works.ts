/** Texts of the choices, prices and the homeowner's page. */
export const works = {};
