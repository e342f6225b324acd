import { rainMetresPerSecond } from '../units/flow.js';

/*
 * Peak runoff of a small area by the rational method (Kuichling 1889): Q = C i A, exact in SI.
 * In US practice C in/h acres gives cubic feet a second with a factor of 1.008 that is usually dropped; here nothing
 * is dropped. Valid for small areas, under 200 acres (80 ha), with the rain of a storm as long as water takes to
 * come from the furthest corner: five minutes on a lot.
 */

/**
 * @param runoff share of the rain that runs off, 0 to 1.
 * @param rainMmPerHour intensity of the rain.
 * @throws RangeError for values outside what they can be.
 */
export function rationalPeakM3s(runoff: number, rainMmPerHour: number, areaM2: number): number {
  if (!(runoff >= 0 && runoff <= 1)) throw new RangeError(`runoff must be between 0 and 1, got ${runoff}`);
  for (const [name, value] of Object.entries({ rainMmPerHour, areaM2 })) {
    if (!(value >= 0 && Number.isFinite(value))) {
      throw new RangeError(`${name} must be a finite number of at least 0, got ${value}`);
    }
  }
  return runoff * rainMetresPerSecond(rainMmPerHour) * areaM2;
}
