/** A stated chance and what came of it. */
export interface Forecast {
  readonly chance: number;
  readonly found: boolean;
}

/** Mean squared difference of chance and outcome (Brier 1950): 0 is perfect. */
export function brierOf(forecasts: readonly Forecast[]): number {
  const sum = forecasts.reduce((s, { chance, found }) => s + (chance - (found ? 1 : 0)) ** 2, 0);
  return forecasts.length === 0 ? 0 : sum / forecasts.length;
}

/** Stretches whose chance was said to be alike: what was said on average, and what was found. */
export interface CalibrationBin {
  readonly from: number;
  readonly to: number;
  readonly count: number;
  readonly meanChance: number;
  readonly foundShare: number;
}

/** Ten groups of equal count by stated chance: was what was said to happen in so many of ten seen in so many? */
export function calibrationOf(forecasts: readonly Forecast[], groups = 10): CalibrationBin[] {
  const sorted = [...forecasts].sort((a, b) => a.chance - b.chance || Number(a.found) - Number(b.found));
  const bins: CalibrationBin[] = [];
  for (let g = 0; g < groups; g++) {
    const from = Math.round((g * sorted.length) / groups);
    const to = Math.round(((g + 1) * sorted.length) / groups);
    const bin = sorted.slice(from, to);
    const [first, last] = [bin[0], bin[bin.length - 1]];
    if (!first || !last) continue;
    bins.push({
      from: first.chance,
      to: last.chance,
      count: bin.length,
      meanChance: bin.reduce((s, f) => s + f.chance, 0) / bin.length,
      foundShare: bin.filter((f) => f.found).length / bin.length,
    });
  }
  return bins;
}
