const Z = 1.959964; // 97.5 % point of the normal distribution

/** 95 % interval of a share, k of n (Wilson 1927, J. Am. Stat. Assoc. 22: 209-212). */
export function wilson(k, n) {
  const middle = (k + Z ** 2 / 2) / (n + Z ** 2);
  const half = (Z / (n + Z ** 2)) * Math.sqrt((k * (n - k)) / n + Z ** 2 / 4);
  return [middle - half, middle + half];
}
