import { cite } from '../sources/cited.js';
import { fromFeet } from '../units/length.js';

/** What the flow in any pipe is held against, from published rules. */
export const pipeFlow = {
  /** Velocity in the full pipe at which it keeps itself clean, m/s. */
  selfCleansingMs: cite(Number(fromFeet(2)), 'aspe-data-book', 'read', '2 ft/s flowing full; some ask for 3'),
  /** n that is asked for at least where a smooth pipe has holes. */
  perforatedN: cite(
    0.02,
    'austin-drainage-criteria',
    'read',
    'smooth perforated plastic, minimum for design',
  ),
  /** Metric plastic pipe is named by its outside diameter: sizes that no inch pipe comes near, millimetres. */
  metricOutsideMm: cite([110, 125, 160], 'en-1401', 'memory'),
  /** Inside over outside diameter of it: a wall of 1 / 34. */
  metricInsideShare: cite(1 - 2 / 34, 'en-1401', 'memory', 'SDR 34'),
} as const;
