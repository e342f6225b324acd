import { describe, expect, it } from 'vitest';
import { protectionSheetText } from '../../packages/cli/src/print/protection-sheet.js';
import { styleFor } from '../../packages/cli/src/print/style.js';
import { lonLatOf, planeAt } from '../../packages/core/src/geometry/plane.js';
import { evaluateRoute, protectionSheet, type RouteRequest } from '../../packages/core/src/index.js';
import { scene } from '../scenes/scene.js';

const plane = planeAt(-93, 45);
const site = scene()
  .tree({ at: [10, 2.3], id: 'oak', species: 'Quercus rubra', dbh_cm: 40 })
  .site();
const request: RouteRequest = {
  asOf: '2026-11-25',
  from: { position: lonLatOf(plane, 0, 0) },
  to: [{ position: lonLatOf(plane, 20, 0) }],
  pipe: { material: 'pvc-sdr35', sizeM: 0.1 },
};
const sheet = protectionSheet(
  site,
  request,
  evaluateRoute(site, request, [lonLatOf(plane, 0, 0), lonLatOf(plane, 20, 0)]),
);

describe('the sheet of the trees along a route, printed', () => {
  it.each(['us', 'metric'] as const)('keeps to the width and to %s units', (units) => {
    const text = protectionSheetText(sheet, units, styleFor(false), 72);
    const lines = text.split('\n');
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(72);
    expect(lines[0]).toBe('Trees');
    expect(text).toContain(units === 'us' ? 'trunk 16 in' : 'trunk 40 cm');
    const trees = text.slice(0, text.indexOf('Before you dig'));
    expect(trees).not.toMatch(units === 'us' ? /\d (m|cm)\b/ : /\d (ft|in)\b/);
  });
});
