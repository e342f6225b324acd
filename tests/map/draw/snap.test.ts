import { describe, expect, it } from 'vitest';
import { distanceM, shifted } from '../../../apps/map/src/draw/flat.js';
import { pick } from '../../../apps/map/src/draw/pick.js';
import { snapTo } from '../../../apps/map/src/draw/snap.js';
import { area, CORNER, documentOf, line, point } from './lot.js';

const m = (x: number, y: number) => shifted(CORNER, x, y);
const main = line({ kind: 'drain', id: 'main' }, [m(0, 0), m(10, 0), m(10, 10)]);
const basin = point({ kind: 'fitting', type: 'basin', id: 'B1' }, m(4, 0.1));
const tree = point({ kind: 'tree', id: 't1' }, m(5, 5));
const house = area({ kind: 'obstacle', type: 'building', id: 'house' }, [
  m(-20, 0),
  m(-5, 0),
  m(-5, 9),
  m(-20, 9),
]);
const shed = area({ kind: 'obstacle', type: 'building', id: 'shed' }, [
  m(-12, 3),
  m(-9, 3),
  m(-9, 6),
  m(-12, 6),
]);
const lot = area({ kind: 'obstacle', type: 'boundary', id: 'lot' }, [
  m(-30, -9),
  m(30, -9),
  m(30, 30),
  m(-30, 30),
]);
const site = documentOf(main, basin, tree, house, shed, lot);

describe('a new place', () => {
  const snap = (x: number, y: number, within = 1) => snapTo(site, m(x, y), 'pipes', within, null);

  it('is drawn to an end, a bend, a fitting or along a line, whichever is stronger', () => {
    expect(snap(0.5, 0.5)?.onto).toBe('end');
    expect(snap(10.3, 0.2)?.onto).toBe('bend');
    expect(snap(4.4, 0)?.onto).toBe('fitting');
    const along = snap(7, 0.6);
    expect(along?.onto).toBe('line');
    expect(distanceM(along?.at ?? CORNER, m(7, 0))).toBeLessThan(0.001);
  });

  it('stays where it is where nothing is near, and never goes to itself or to a tree', () => {
    expect(snap(5, 5)).toBeNull();
    expect(snap(7, 1.2)).toBeNull();
    expect(snapTo(site, m(7, 0.2), 'pipes', 1, { kind: 'drain', id: 'main' })).toBeNull();
    expect(snapTo(site, m(0.2, 0.2), 'none', 1, null)).toBeNull();
  });

  it('of a fitting is drawn to lines alone, of a building to corners', () => {
    expect(snapTo(site, m(4, 0.1), 'lines', 1, null)?.ref.id).toBe('main');
    expect(snapTo(site, m(-5.4, 0.2), 'corners', 1, null)?.onto).toBe('corner');
  });
});

describe('a tap', () => {
  const tap = (x: number, y: number) => pick(site, m(x, y), 0.8)?.id ?? null;

  it('takes up a point before a line, a line before an area, a small area before a large one', () => {
    expect(tap(4, 0)).toBe('B1');
    expect(tap(7, 0.4)).toBe('main');
    expect(tap(5.3, 5.3)).toBe('t1');
    expect(tap(-10, 4)).toBe('shed');
    expect(tap(-18, 4)).toBe('house');
  });

  it('takes up a lot line at its edge and not from anywhere inside it', () => {
    expect(tap(20, 20)).toBeNull();
    expect(tap(20, -9.2)).toBe('lot');
  });
});
