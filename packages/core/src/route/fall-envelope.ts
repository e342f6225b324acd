/** A height at a station, straight between stations; two at one station where it jumps. */
export interface Height {
  readonly s: number;
  readonly z: number;
}

/**
 * Highest line at or under `bounds` that sinks by at least `sink` a metre as the stations grow: it sinks so much from
 * the last place that held it down, until the bound itself is lower. A corner is set where the one meets the other.
 */
function sinkingPass(bounds: readonly Height[], sink: number): Height[] {
  const line: Height[] = [];
  bounds.forEach((bound, i) => {
    const last = line[line.length - 1];
    const before = bounds[i - 1];
    if (last === undefined || before === undefined) {
      line.push(bound);
      return;
    }
    const z = last.z - sink * (bound.s - last.s);
    if (z <= bound.z) {
      line.push({ s: bound.s, z });
      return;
    }
    const above = before.z - last.z;
    const share = above / (above + z - bound.z);
    if (above > 0 && bound.s > last.s && share < 1) {
      const s = last.s + share * (bound.s - last.s);
      line.push({ s, z: last.z - sink * (s - last.s) });
    }
    line.push(bound);
  });
  return line;
}

const mirrored = (line: readonly Height[]): Height[] => line.map(({ s, z }) => ({ s: -s, z })).reverse();

/** One height a station, the last of those at a jump: a line that fell to it is already there. */
function joined(line: readonly Height[]): Height[] {
  return line.filter(({ s }, i) => i === line.length - 1 || s < (line[i + 1] as Height).s);
}

/**
 * Highest line that stays at or under `bounds` and falls by at least `minFall` and at most `maxFall` everywhere;
 * stations from its upper end, never falling back. Every other line within these rules is nowhere above it, so that
 * if it runs too deep, all do. Two passes, one each way: exact.
 */
export function highestLine(bounds: readonly Height[], minFall: number, maxFall: number): Height[] {
  const falling = sinkingPass(bounds, minFall);
  return joined(mirrored(sinkingPass(mirrored(falling), -maxFall)));
}

/** Lowest line at or over `bounds` within the same rules. */
export function lowestLine(bounds: readonly Height[], minFall: number, maxFall: number): Height[] {
  const turned = bounds.map(({ s, z }) => ({ s: -s, z: -z })).reverse();
  return highestLine(turned, minFall, maxFall)
    .map(({ s, z }) => ({ s: -s, z: -z }))
    .reverse();
}

/** Height of a line at a station, the end's beyond it. */
export function heightAt(line: readonly Height[], station: number): number {
  let low = 0;
  let high = line.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((line[middle] as Height).s <= station) low = middle;
    else high = middle;
  }
  const a = line[low] as Height;
  const b = line[high] as Height;
  if (station <= a.s || b.s <= a.s) return a.z;
  return station >= b.s ? b.z : a.z + ((station - a.s) / (b.s - a.s)) * (b.z - a.z);
}

/** Stations nearer than this are one, metres: between them a slope would be rounding. */
const ONE_STATION_M = 1e-6;

/** Stations of several lines together, growing; of those that are one, the last. */
export function stationsOf(...lines: readonly (readonly Height[])[]): number[] {
  const all = [0, ...lines.flatMap((line) => line.map(({ s }) => s))].sort((a, b) => a - b);
  return all
    .filter((s, i) => i === 0 || i === all.length - 1 || (all[i + 1] as number) - s > ONE_STATION_M)
    .filter((s, i, kept) => i === 0 || s - (kept[i - 1] as number) > ONE_STATION_M);
}
