import { beforeEach, describe, expect, it } from 'vitest';
import { openSite } from '../../apps/map/src/open-site.js';
import * as state from '../../apps/map/src/state.js';
import { siteText } from './site-text.js';

const corner = openSite([siteText('corner-lot')], '2026-11-25').opened;
const campus = openSite([siteText('small-campus')], '2026-11-25').opened;

beforeEach(() => {
  state.opened.value = corner;
  state.switchedUnits.value = null;
  state.sheetHeight.value = 'half';
  state.wide.value = true;
  state.chooseStretch(null);
});

describe('state of the page', () => {
  it("takes the site's own units until somebody switches", () => {
    expect(state.units.value).toBe('us');
    state.opened.value = campus;
    expect(state.units.value).toBe('metric');
    state.switchedUnits.value = 'us';
    expect(state.units.value).toBe('us');
    state.opened.value = corner;
    expect(state.units.value).toBe('us');
  });

  it('derives the chosen segment and its line from one id', () => {
    state.chooseStretch('tail/3');
    expect(state.segment.value?.drainId).toBe('tail');
    expect(state.line.value?.segments).toContain('tail/3');
    state.chooseStretch('no-such-line/1');
    expect(state.segment.value).toBeNull();
    expect(state.line.value).toBeNull();
  });

  it('shows a tree or a stretch, never both', () => {
    state.chooseStretch('tail/3');
    state.chooseTree('elm');
    expect(state.segment.value).toBeNull();
    expect(state.tree.value?.name).toMatch(/elm/i);
    state.chooseStretch('tail/3');
    expect(state.tree.value).toBeNull();
  });

  it('walks along a line and stops at its ends', () => {
    const ids = state.lineById.value.get('tail')?.segments ?? [];
    state.chooseStretch(ids[0] ?? null);
    state.stepAlong(-1);
    expect(state.chosenStretch.value).toBe(ids[0]);
    for (const id of ids.slice(1)) {
      state.stepAlong(1);
      expect(state.chosenStretch.value).toBe(id);
    }
    state.stepAlong(1);
    expect(state.chosenStretch.value).toBe(ids.at(-1));
  });

  it('raises a lowered sheet when something is chosen', () => {
    state.sheetHeight.value = 'low';
    state.chooseStretch('tail/3');
    expect(state.sheetHeight.value).toBe('half');
  });

  it('knows what part of the plan the sheet lies over', () => {
    expect(state.coveredBottom.value).toBe(0);
    state.wide.value = false;
    state.pageHeight.value = 844;
    const { low, half, full } = state.sheetPixels.value;
    expect(low).toBeLessThan(half);
    expect(half).toBeLessThan(full);
    expect(full).toBeLessThan(844);
    expect(state.coveredBottom.value).toBe(half);
  });

  it('draws small sites as SVG and large ones on canvas', () => {
    expect(state.onCanvas.value).toBe(false);
    const many = Array.from({ length: 2100 }, (_, i) => ({ ...corner.site.trees[0], id: `t${i}` }));
    const trees = many as unknown as typeof corner.site.trees;
    state.opened.value = { ...corner, site: { ...corner.site, trees } };
    expect(state.onCanvas.value).toBe(true);
  });

  it('shares site, stretch and a switch of units, and nothing else', () => {
    state.siteKey.value = 'corner-lot';
    state.chooseStretch('tail/3');
    expect(state.shared.value).toEqual({ site: 'corner-lot', stretch: 'tail/3', units: null });
  });
});
