/** Ways for roots to do harm, numbered for columns. */
export const WAY_JOINT = 0;
export const WAY_SLOT = 1;
export const WAY_CRUSH = 2;
export const WAYS = 3;
export const VIGOUR_CLASSES = 5;
