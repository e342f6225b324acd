/** A number to the nearest whole step, without the tail of binary fractions. */
export const rounded = (value, step) => Number((Math.round(value / step) * step).toFixed(6));
