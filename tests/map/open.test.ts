import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { engineInPlace } from '../../apps/map/src/engine.js';
import { opener } from '../../apps/map/src/open.js';
import * as state from '../../apps/map/src/state.js';
import { siteText } from './site-text.js';

const page = opener(engineInPlace());

beforeEach(async () => {
  state.problem.value = null;
  await page.openInputs([siteText('corner-lot')], 'corner-lot', 'tail/3');
});

afterEach(() => {
  vi.unstubAllGlobals();
});

describe('opening files', () => {
  it('shows the site and the stretch that the address asked for', () => {
    expect(state.opened.value?.site.name).toMatch(/corner lot/i);
    expect(state.segment.value?.id).toBe('tail/3');
    expect(state.problem.value).toBeNull();
    expect(state.busy.value).toBe(false);
  });

  it('takes chosen files and forgets the stretch of the site before', async () => {
    const { name, text } = siteText('french-drain-plan');
    await page.openFiles([new File([text], name)]);
    expect(state.opened.value?.site.name).toMatch(/french drain/i);
    expect(state.siteKey.value).toBeNull();
    expect(state.fileNames.value).toEqual([name]);
    expect(state.chosenStretch.value).toBeNull();
  });

  const hostile = {
    'cut off in the middle': siteText('corner-lot').text.slice(0, 3000),
    'empty text': '',
    'no GeoJSON at all': '[1, 2, 3]',
    'a collection of nothing': '{"type":"FeatureCollection","features":[]}',
    'nested beyond reason': `${'['.repeat(50_000)}${']'.repeat(50_000)}`,
  };
  for (const [what, text] of Object.entries(hostile)) {
    it(`says why and leaves the open site alone: ${what}`, async () => {
      const before = state.opened.value;
      await page.openFiles([new File([text], 'bad.geojson')]);
      expect(state.problem.value).toMatch(/^Could not open bad\.geojson: ./);
      expect(state.opened.value).toBe(before);
      expect(state.chosenStretch.value).toBe('tail/3');
      expect(state.busy.value).toBe(false);
    });
  }

  it('takes the message down when the next file opens', async () => {
    await page.openFiles([new File(['{'], 'bad.geojson')]);
    expect(state.problem.value).not.toBeNull();
    await page.openInputs([siteText('corner-lot')]);
    expect(state.problem.value).toBeNull();
  });

  it('says so when a file of the page itself is not there', async () => {
    vi.stubGlobal('fetch', async () => new Response('', { status: 404 }));
    const before = state.opened.value;
    expect(await page.openServed('opened.json', null)).toBe(true);
    expect(state.busy.value).toBe(false);
    expect(state.problem.value).toMatch(/opened\.json: it is not there/);
    expect(state.opened.value).toBe(before);
  });

  it('opens what a local server hands over', async () => {
    const files = [siteText('french-drain-plan')];
    vi.stubGlobal('fetch', async () => new Response(JSON.stringify({ files })));
    expect(await page.openServed('opened.json', null)).toBe(true);
    expect(state.opened.value?.site.name).toMatch(/french drain/i);
    expect(await page.openServed('', null)).toBe(false);
  });

  it('shows the site asked for last, whichever arrives first', async () => {
    const arrivals = new Map<string, (answer: Response) => void>();
    vi.stubGlobal(
      'fetch',
      (address: string) => new Promise<Response>((arrive) => arrivals.set(address, arrive)),
    );
    const first = page.openDemo('small-campus');
    const second = page.openDemo('french-drain-plan');
    const [campus, french] = [...arrivals.values()];
    french?.(new Response(siteText('french-drain-plan').text));
    await second;
    campus?.(new Response(siteText('small-campus').text));
    await first;
    expect(state.siteKey.value).toBe('french-drain-plan');
    expect(state.opened.value?.site.name).toMatch(/french drain/i);
  });
});
