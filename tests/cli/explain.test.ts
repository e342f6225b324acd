import { describe, expect, it } from 'vitest';
import { CORNER_LOT, call, callOn } from './call.js';
import { smallSite } from './small-site.js';

describe('explain', () => {
  it('takes the worst segment where none is named', async () => {
    const worst = await call(['explain', CORNER_LOT]);
    expect(worst.code).toBe(0);
    expect(worst.out).toMatch(/^tail\/3: act\. Camera now/);
    expect((await call(['explain', CORNER_LOT, '--segment', 'tail/3'])).out).toBe(worst.out);
  });

  it('says where, how likely, which trees, what would change it, what was assumed, and where from', async () => {
    const { out } = await call(['explain', CORNER_LOT]);
    for (const label of [
      ...['Where', 'Chance', 'Trees', 'Ways in', 'Inside', 'Would change', 'Next look', 'Cautions'],
      ...['Assumed', 'Numbers', 'Sources'],
    ]) {
      expect(out).toMatch(new RegExp(`^${label} `, 'm'));
    }
    const flowing = out.replace(/\s+/g, ' ');
    expect(flowing).toMatch(
      /About \d in 10, could be \d to (nearly )?\d+, that roots get in within 10 years/,
    );
    expect(flowing).toMatch(/among the worst tenth is >?\d+ % sure/);
    expect(flowing).toMatch(/American elm \(elm\), [\d.]+ ft away: \d+ % of the chance; trunk 37 in/);
    expect(flowing).toMatch(/joints sealed: \d+ -> \d+ %/);
    expect(flowing).toContain('Day and others 2010 (read)');
    expect(flowing).toContain('(from memory)');
    expect(flowing).toContain('(our judgement)');
    expect(flowing).toContain('buried utilities located');
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
  });

  it('gives the same parts as JSON', async () => {
    const { out } = await call(['explain', CORNER_LOT, '--segment', 'collector/8', '--json']);
    const result = JSON.parse(out) as Record<string, unknown>;
    expect(result).toMatchObject({
      schema: 1,
      model: { version: expect.any(String) },
      asOf: '2026-11-25',
      horizonYears: 10,
      segment: { id: 'collector/8', drainId: 'collector' },
      line: { drainId: 'collector', segments: expect.arrayContaining(['collector/8']) },
      cautions: expect.arrayContaining([expect.objectContaining({ code: 'locate-utilities' })]),
    });
    const { trees } = result['segment'] as { trees: { id: string }[] };
    const zones = result['trees'] as { id: string }[];
    expect(zones.map(({ id }) => id).sort()).toEqual(trees.map(({ id }) => id).sort());
    expect(result['factors']).toEqual(
      expect.arrayContaining([expect.objectContaining({ source: 'our-judgement', known: 'judgement' })]),
    );
  });

  it('shows what the ranking shows', async () => {
    const { segments } = JSON.parse((await call(['rank', CORNER_LOT, '--json'])).out) as {
      segments: { id: string }[];
    };
    for (const segment of [segments[3], segments[20]]) {
      const { out } = await call(['explain', CORNER_LOT, '--segment', segment?.id ?? '', '--json']);
      expect((JSON.parse(out) as { segment: unknown }).segment).toEqual(segment);
    }
  });

  it('finds a segment of a line whose id has a stroke in it', async () => {
    const { code, out } = await callOn(
      smallSite({ id: 'north/main' }),
      'explain',
      '--segment',
      'north/main/2',
    );
    expect(code).toBe(0);
    expect(out).toMatch(/^north\/main\/2: /);
  });

  const withFinding = (seen: string): string => {
    const site = JSON.parse(smallSite()) as { features: unknown[] };
    const finding = {
      type: 'Feature',
      geometry: null,
      properties: { kind: 'finding', drain: 'main', from: 'start', at_m: 5, seen, date: '2024' },
    };
    return JSON.stringify({ ...site, features: [...site.features, finding] });
  };

  it('says what a camera saw and nobody dealt with', async () => {
    const text = withFinding('mass');
    expect((await callOn(text, 'explain')).out).toContain('a root mass seen in 2024');
    const table = await callOn(text, 'rank');
    expect(table.out).toContain('a root mass seen in 2024');
    expect(table.out).toContain('the chance that it stops the line');
  });

  // common practice: a crushed stretch can only be replaced or moved
  it('offers nothing but replacing for what was seen crushed', async () => {
    const { out } = await callOn(withFinding('crushed'), 'rank', '--top', '1');
    expect(out).toMatch(/seen crushed in 2024/);
    expect(out).toMatch(/replace or move this stretch/);
    expect(out).not.toContain('->');
  });
});
