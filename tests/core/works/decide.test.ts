import { describe, expect, it } from 'vitest';
import type { Site } from '../../../packages/core/src/model/site.js';
import type { Choice, ChoiceId, DecideResult } from '../../../packages/core/src/model/works.js';
import { demoPrices } from '../../../packages/core/src/prices/demo-prices.js';
import { rank } from '../../../packages/core/src/risk/rank.js';
import { readSite } from '../../../packages/core/src/validate/read-site.js';
import { decide } from '../../../packages/core/src/works/decide.js';
import type { DecideOptions } from '../../../packages/core/src/works/options.js';
import type { WorkRequest } from '../../../packages/core/src/works/stretch.js';
import { workStretch } from '../../../packages/core/src/works/work-stretch.js';
import { smallSite } from '../../cli/small-site.js';
import { AS_OF, seen, unseen } from './corner-lot.js';

const on = (site: Site, request: WorkRequest, options: Partial<DecideOptions> = {}): DecideResult =>
  decide(site, request, { asOf: AS_OF, ...options });

const choice = ({ choices }: DecideResult, id: ChoiceId): Choice =>
  choices.find((one) => one.id === id) as Choice;

/** A clay line past an elm with one thing seen in it. */
function withFinding(what: string, drain = {}, from = 3, to: number | null = null): Site {
  const text = JSON.parse(smallSite({ size_mm: 100, ...drain })) as { features: unknown[] };
  text.features.push({
    type: 'Feature',
    properties: {
      kind: 'finding',
      drain: 'main',
      from: 'end',
      at_m: from,
      to_m: to,
      seen: what,
      date: '2026-10-01',
    },
    geometry: null,
  });
  return readSite([{ name: 'site', text: JSON.stringify(text) }]).site;
}

describe('what is possible (common practice)', () => {
  it.each(['full', 'crushed'])('replaces or moves what is %s, and never clears or lines it', (what) => {
    const result = on(withFinding(what, {}, 2, 9), { drain: 'main' });
    expect(choice(result, 'clear-again')).toMatchObject({ possible: false });
    expect(choice(result, 'line-inside')).toMatchObject({ possible: false });
    expect(choice(result, 'barrier')).toMatchObject({ possible: false });
    expect(choice(result, 'fell-tree')).toMatchObject({ possible: false });
    expect(choice(result, 'replace-heavier').possible).toBe(true);
    expect(result.recommended).toMatch(/^replace-/);
  });

  it('clears fine roots with a jet, a mass in clay with a cutter, and tears no corrugated wall', () => {
    const visit = (site: Site) => choice(on(site, { drain: 'main' }), 'clear-again').recurring[0]?.what;
    expect(visit(withFinding('fine'))).toBe('clear-by-jet');
    expect(visit(withFinding('mass'))).toBe('clear-by-cutter');
    const corrugated = on(withFinding('mass', { material: 'hdpe-corrugated' }), { drain: 'main' });
    expect(choice(corrugated, 'clear-again').recurring[0]?.what).toBe('clear-by-jet');
    expect(choice(corrugated, 'clear-again').reasons).toContain('cutters-tear-corrugated');
  });

  it.each([
    ['sag', {}, 'lost-shape-cannot-be-lined'],
    ['offset', {}, 'lost-shape-cannot-be-lined'],
    ['fine', { material: 'hdpe-corrugated' }, 'corrugated-cannot-be-lined'],
    ['fine', { material: 'pvc-thin-wall', perforated: true }, 'perforated-cannot-be-lined'],
    ['fine', { size_mm: 50 }, 'too-small-to-line'],
  ])('does not line a pipe with %s %o', (what, drain, reason) => {
    const result = on(withFinding(what, drain), { drain: 'main' });
    expect(choice(result, 'line-inside')).toMatchObject({ possible: false, reasons: [reason] });
  });

  it('mends one spot where one was seen, and no stretch longer than a hole', () => {
    const result = on(withFinding('offset', {}, 6), { drain: 'main' });
    const spot = choice(result, 'spot-repair');
    expect(spot).toMatchObject({ possible: true, reasons: ['old-joints-stay'] });
    expect((spot.work?.toM as number) - (spot.work?.fromM as number)).toBeCloseTo(3, 6);
    expect(spot.work?.fromM as number).toBeLessThan(6);
    expect(spot.work?.toM as number).toBeGreaterThan(6);
    expect(choice(on(withFinding('mass', {}, 2, 8), { drain: 'main' }), 'spot-repair').possible).toBe(false);
    expect(choice(on(unseen(), { drain: 'tail' }), 'spot-repair').reasons).toEqual(['nothing-known-to-mend']);
  });

  it('sells no asbestos cement and knows no pipe that nobody named', () => {
    const of = (material: string | undefined) =>
      choice(on(withFinding('fine', { material }), { drain: 'main' }), 'replace-like').reasons;
    expect(of('asbestos-cement')).toEqual(['not-sold-any-more']);
    expect(of(undefined)).toEqual(['pipe-not-known']);
  });

  it('takes in water at a sag, and only there', () => {
    expect(
      choice(on(withFinding('sag', {}, 5, 6), { drain: 'main' }), 'inlet-at-low-spot').work?.fromM,
    ).toBeCloseTo(5.5, 1);
    expect(choice(on(withFinding('fine'), { drain: 'main' }), 'inlet-at-low-spot').possible).toBe(false);
  });

  it('puts an inlet where water stands, and not into a line that is stopped', () => {
    const text = smallSite({ size_mm: 100, wet: 'standing' });
    const standing = on(readSite([{ name: 'site', text }]).site, { drain: 'main' });
    const [inlet, leave] = (['inlet-at-low-spot', 'leave'] as const).map(
      (id) => choice(standing, id).chance?.['10'].likely as number,
    ) as [number, number];
    expect(inlet).toBeLessThan(leave);
    const stopped = withFinding('full', { wet: 'standing' }, 5, 6);
    expect(choice(on(stopped, { drain: 'main' }), 'inlet-at-low-spot').reasons).toEqual([
      'pipe-stays-blocked',
    ]);
  });

  it('takes the water away that stood in a sag: what is left is a line that is often wet', () => {
    const outlook = (site: Site, id: ChoiceId) =>
      choice(on(site, { drain: 'main' }), id).chance?.['10'].likely ?? 1;
    const wet = (how: string) =>
      readSite([{ name: 'site', text: smallSite({ size_mm: 100, wet: how }) }]).site;
    const sag = withFinding('sag', {}, 5, 6);
    expect(outlook(sag, 'inlet-at-low-spot')).toBeLessThan(outlook(sag, 'leave'));
    const inlet = outlook(wet('standing'), 'inlet-at-low-spot');
    const [often, standing] = [outlook(wet('often'), 'leave'), outlook(wet('standing'), 'leave')];
    expect(Math.abs(inlet - often)).toBeLessThan(0.3 * (standing - often));
  });

  it('buys again what stands in the stretch, and nothing below or above it', () => {
    const { features, ...site } = JSON.parse(smallSite({ size_mm: 100 })) as {
      features: { geometry: { coordinates: [number, number][] } }[];
    };
    const [upper = [0, 0], outlet = [0, 0]] = features[1]?.geometry.coordinates ?? [];
    const cleanout = (id: string, share: number) => ({
      type: 'Feature',
      properties: { kind: 'fitting', id, type: 'cleanout' },
      geometry: { type: 'Point', coordinates: [outlet[0] + share * (upper[0] - outlet[0]), outlet[1]] },
    });
    // 12 m long: at 1.8, 6 and 10.2 m
    const made = [cleanout('low', 0.15), cleanout('middle', 0.5), cleanout('high', 0.85)];
    const text = JSON.stringify({ ...site, features: [...features, ...made] });
    const result = on(readSite([{ name: 'site', text }]).site, { drain: 'main', fromM: 4, toM: 8 });
    const replaced = choice(result, 'replace-heavier').work?.fittings.map(({ replaces }) => replaces) ?? [];
    expect(replaced.filter((id) => id !== null)).toEqual(['middle']);
  });

  it('speaks of no tree that the trench is clear of, and of a lawn as a lawn', () => {
    const text = smallSite({ size_mm: 100 }, { dbh_cm: 8, canopy_radius_m: 1 });
    const { site } = readSite([{ name: 'site', text }]);
    const { tree, garden, digs } = choice(on(site, { drain: 'main' }), 'replace-heavier');
    expect(digs.length).toBeGreaterThan(0);
    expect(tree).toMatchObject({ effect: 'none', harm: [] });
    expect(garden).toBe('trench');
  });

  it('looks first before it clears where no roots were seen', () => {
    const reasons = (site: Site, drain: string) => choice(on(site, { drain }), 'clear-again').reasons;
    expect(reasons(withFinding('mass'), 'main')).not.toContain('look-first');
    expect(reasons(unseen(), 'tail')).toContain('look-first');
  });

  it('sets no barrier within three trunk diameters of a stem (Smiley 2008)', () => {
    // the elm of the corner lot stands 3 m from the tail and is 0.95 m thick
    expect(choice(on(unseen(), { drain: 'tail' }), 'barrier').reasons).toEqual(['barrier-too-near-stem']);
  });
});

describe('the choices for the tail of the corner lot, full of roots', () => {
  const result = on(seen(), { drain: 'tail' });
  const heavier = choice(result, 'replace-heavier');

  it('come down to new pipe with an access basin where the lines meet', () => {
    expect(result.target.known).toMatchObject({ seen: 'full' });
    expect(result.recommended).toBe('replace-heavier');
    expect(heavier.work?.fittings).toEqual([
      expect.objectContaining({ type: 'outlet', replaces: 'O1' }),
      expect.objectContaining({ type: 'basin', replaces: 'C1' }),
    ]);
    expect(heavier.quantities.map(({ code }) => code)).toContain('basin');
  });

  it('lay fewer joints past the tree than before', () => {
    const pipe = heavier.quantities.find(({ code }) => code === 'pipe-pvc-sch40-4in');
    expect(pipe?.basis).toMatch(/^2 pieces/);
    const like = choice(result, 'replace-like').chance?.['10'].likely as number;
    expect(heavier.chance?.['10'].likely as number).toBeLessThan(like / 5);
  });

  it('dig by hand where the elm is near, bore nowhere, and call the arborist', () => {
    expect(heavier.digs.some(({ handDig }) => handDig)).toBe(true);
    expect(heavier.digs.some(({ bored }) => bored)).toBe(false);
    expect(heavier.tree).toMatchObject({ effect: 'arborist-says', felled: null });
    expect(heavier.quantities.map(({ code }) => code)).toContain('arborist-visit');
    expect(result.cautions.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['locate-utilities', 'arborist-first', 'protected-trees', 'local-code']),
    );
  });

  it('open the sidewalk and say so', () => {
    expect(heavier.garden).toBe('paving-opened');
    expect(heavier.quantities.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['saw-cut', 'reinstate-paving']),
    );
  });

  it('dig as long as the line is, and take the old pipe out', () => {
    const dug = heavier.digs.reduce((sum, { lengthM }) => sum + lengthM, 0);
    expect(dug).toBeCloseTo(result.target.lineLengthM, 6);
    expect(heavier.digs.reduce((sum, { oldPipeM }) => sum + oldPipeM, 0)).toBeCloseTo(dug, 6);
  });

  it('add up: present value is now, visits and trouble', () => {
    for (const { presentValue, parts } of result.choices) {
      if (parts === null) continue;
      expect(presentValue).toBeCloseTo(parts.now + parts.recurring + parts.trouble, 9);
    }
  });
});

describe('odds of a choice', () => {
  it('are those of the ranking where nothing is done', () => {
    const site = unseen();
    const ranked = rank(site, { asOf: AS_OF }).segments.find(({ id }) => id === 'tail/3');
    const left = choice(on(site, { segment: 'tail/3' }), 'leave').chance?.['10'];
    for (const end of ['low', 'likely', 'high'] as const) {
      expect(left?.[end]).toBeCloseTo(ranked?.chance[end] as number, 9);
    }
  });

  it('are no better for a longer stretch, nor over a longer time', () => {
    const site = unseen();
    const one = choice(on(site, { segment: 'tail/3' }), 'leave').chance;
    const all = choice(on(site, { drain: 'tail' }), 'leave').chance;
    expect(all?.['10'].likely as number).toBeGreaterThan(one?.['10'].likely as number);
    expect(all?.['25'].likely as number).toBeGreaterThan(all?.['10'].likely as number);
  });

  it('fall with a felled tree, a barrier and a sealed basin', () => {
    const result = on(unseen(), { segment: 'collector/11' });
    const ten = (id: ChoiceId): number => choice(result, id).chance?.['10'].likely as number;
    for (const id of ['fell-tree', 'barrier', 'basin-for-wye', 'replace-heavier'] as const) {
      expect(ten(id), id).toBeLessThan(ten('leave'));
    }
  });

  it('rise for what is known and left in the pipe', () => {
    const before = choice(on(unseen(), { segment: 'collector/11' }), 'leave').chance?.['10'].likely as number;
    const after = choice(on(seen(), { segment: 'collector/11' }), 'leave').chance?.['10'].likely as number;
    expect(after).toBeGreaterThan(before);
  });
});

describe('limits of the owner', () => {
  it('keep trees unless they may be felled', () => {
    const request = { segment: 'collector/11' };
    expect(choice(on(unseen(), request), 'fell-tree').breaks).toEqual(['keep-trees']);
    expect(choice(on(unseen(), request, { limits: { keepTrees: false } }), 'fell-tree').breaks).toEqual([]);
  });

  it('rule out what is dug, what is too dear and what is too risky', () => {
    const limits = { noTrench: true, mostNow: 500, mostChance10: 0.2 };
    const result = on(seen(), { segment: 'collector/11' }, { limits });
    expect(choice(result, 'replace-heavier').breaks).toEqual(['most-now', 'no-trench']);
    expect(choice(result, 'leave').breaks).toEqual(['most-chance-10']);
    expect(result.recommended).toBeNull();
    expect(result.switches).toEqual([]);
  });
});

describe('what would change the answer', () => {
  const request = { segment: 'collector/11' };
  const result = on(seen(), request);
  const at = (what: string) => result.switches.find((one) => one.what === what);

  it('is true of the horizon when it is decided again with it', () => {
    const {
      at: years,
      becomes,
      value,
    } = at('horizon-years') as { at: number; becomes: string; value: number };
    expect(on(seen(), request, { assume: { 'horizon-years': years } }).recommended).toBe(becomes);
    const before = years + Math.sign(value - years);
    expect(on(seen(), request, { assume: { 'horizon-years': before } }).recommended).toBe(result.recommended);
  });

  it('is true of the discount rate', () => {
    const tail = on(unseen(), { drain: 'tail' });
    const turn = tail.switches.find(({ what }) => what === 'discount-rate') as {
      at: number;
      becomes: string;
    };
    const again = (rate: number) =>
      on(unseen(), { drain: 'tail' }, { assume: { 'discount-rate': rate } }).recommended;
    expect(again(turn.at + 1e-4)).toBe(turn.becomes);
    expect(again(turn.at - 1e-4)).toBe(tail.recommended);
  });

  it('is true of the cost of a stopped line when the prices are changed', () => {
    const { at: factor, becomes } = at('trouble-cost') as { at: number; becomes: string };
    const priced = (times: number) => {
      const { rows, ...list } = demoPrices();
      // the jet that clears new roots is part of what trouble costs, and here nothing else uses it but clearing
      const scaled = rows.map((row) =>
        ['emergency-call', 'flood-clean-up', 'clear-by-jet'].includes(row.code)
          ? { ...row, price: (Number(row.price) * times).toFixed(4) }
          : row,
      );
      return on(seen(), request, { prices: { ...list, rows: scaled } }).recommended;
    };
    expect(priced(factor * 0.98)).toBe(becomes);
    expect(priced(factor * 1.02)).toBe(result.recommended);
  });
});

describe('prices', () => {
  it('that are missing are said, and what lacks one is not advised', () => {
    const { rows, ...list } = demoPrices();
    const without = { ...list, rows: rows.filter(({ code }) => code !== 'basin') };
    const result = on(seen(), { drain: 'tail' }, { prices: without });
    expect(result.missing).toEqual(['basin']);
    expect(choice(result, 'replace-heavier')).toMatchObject({ now: null, presentValue: null });
    expect(result.recommended).toBe('replace-like');
  });

  it('carry margin and tax into what is paid now', () => {
    const plain = choice(on(seen(), { drain: 'tail' }), 'replace-heavier').now as number;
    const more = choice(on(seen(), { drain: 'tail' }, { terms: { margin: 0.2 } }), 'replace-heavier')
      .now as number;
    expect(more).toBeCloseTo(1.2 * plain, 1);
  });
});

describe('assumptions', () => {
  it('are all listed with a reason, and say which were given', () => {
    const { assumed } = on(seen(), { segment: 'collector/11' }, { assume: { 'stoppages-fine': 0.4 } });
    expect(assumed.length).toBeGreaterThan(12);
    for (const { why, unit, value } of assumed) {
      expect(why.length).toBeGreaterThan(5);
      expect(unit).not.toBe('');
      expect(Number.isFinite(value)).toBe(true);
    }
    expect(assumed.filter(({ given }) => given)).toEqual([
      expect.objectContaining({ key: 'stoppages-fine', value: 0.4 }),
    ]);
  });

  it('change the result', () => {
    const value = (fine: number) =>
      choice(on(seen(), { segment: 'collector/11' }, { assume: { 'stoppages-fine': fine } }), 'leave')
        .presentValue;
    expect(value(0.4) as number).toBeGreaterThan(value(0.1) as number);
  });

  it.each([{ 'horizon-years': 0 }, { 'discount-rate': -0.1 }, { nonsense: 3 }])('refuse %o', (assume) => {
    expect(() => on(seen(), { drain: 'tail' }, { assume: assume as never })).toThrow(RangeError);
  });
});

describe('the stretch to decide on', () => {
  it('is the whole line where only short rests would be left of a full one', () => {
    expect(workStretch(seen(), 'tail/3', { asOf: AS_OF })).toMatchObject({ drain: 'tail', fromM: 0 });
  });

  it('is the segment itself where nothing grave was seen', () => {
    const request = workStretch(unseen(), 'tail/3', { asOf: AS_OF });
    expect(on(unseen(), request).target.segmentIds).toEqual(['tail/3']);
  });

  it.each([[{ drain: 'nowhere' }], [{ segment: 'tail/99' }], [{ drain: 'tail', fromM: 50, toM: 60 }]])(
    '%o is refused',
    (request) => {
      expect(() => on(unseen(), request)).toThrow(RangeError);
    },
  );
});
