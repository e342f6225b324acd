/**
 * A whole number with commas between thousands, `12,345`, in either language: decimals have a point on this page.
 * By hand, since the browser's own takes longer to set up than the whole list to draw.
 */
export const grouped = (n: number): string => String(n).replace(/\B(?=(\d{3})+$)/g, ',');
