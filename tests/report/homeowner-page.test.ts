import { HtmlValidate } from 'html-validate';
import { describe, expect, it } from 'vitest';
import { tensOf, wordCaution } from '../../packages/core/src/index.js';
import { homeownerPage } from '../../packages/report/src/index.js';
import { DEMOS, finding, ownerInput, PIXEL, siteOf, TAIL_FULL } from './inputs.js';
import { elements, parsed, readText } from './page-text.js';

const validator = new HtmlValidate({ extends: ['html-validate:recommended', 'html-validate:document'] });

const faults = async (page: string): Promise<string[]> => {
  const { results } = await validator.validateString(page);
  return results.flatMap(({ messages }) =>
    messages.map(({ ruleId, message, line }) => `${line} ${ruleId}: ${message}`),
  );
};

const lot = siteOf('corner-lot');
const full = siteOf('corner-lot', TAIL_FULL);

describe('the page for the owner', () => {
  for (const name of DEMOS) {
    for (const language of ['en', 'es'] as const) {
      it(`is valid HTML: ${name}, ${language}`, async () => {
        expect(await faults(homeownerPage(ownerInput(siteOf(name), { language })))).toEqual([]);
      });
    }
  }

  it('is valid HTML with findings, photos and choices', async () => {
    expect(await faults(homeownerPage(ownerInput(full, { by: 'A. Nobody' })))).toEqual([]);
  });

  it('asks for nothing from anywhere and runs no script', () => {
    const page = homeownerPage(ownerInput(full));
    const all = elements(parsed(page));
    expect(all.map(({ nodeName }) => nodeName)).not.toContain('script');
    expect(page.match(/https?:\/\/(?!www\.w3\.org\/2000\/svg)/g)).toBeNull();
    const policy = all.find((one) => one.getAttribute('http-equiv') === 'Content-Security-Policy');
    expect(policy?.getAttribute('content')).toContain("default-src 'none'");
    for (const one of all) {
      for (let i = 0; i < one.attributes.length; i++)
        expect(one.attributes.item(i)?.name).not.toMatch(/^on|^style$/);
    }
  });

  it('gives the same counts of ten in words and as marks', () => {
    const input = ownerInput(lot);
    const tens = tensOf(input.segment.chance);
    const page = homeownerPage(input);
    expect(page).toContain(`About ${tens.likely} in 10`);
    const marks = elements(parsed(page)).find((one) => one.getAttribute('class') === 'tens');
    const rings = elements(marks as NonNullable<typeof marks>).filter(
      ({ nodeName }) => nodeName === 'circle',
    );
    expect(rings).toHaveLength(10);
    const dashed = rings.filter((ring) => (ring.getAttribute('stroke-dasharray') ?? '') !== '');
    expect(dashed).toHaveLength(tens.high - tens.likely);
    expect(marks?.getAttribute('aria-label')).toContain(String(tens.likely));
  });

  it('says once, and only once, who decides', () => {
    for (const language of ['en', 'es'] as const) {
      const page = homeownerPage(ownerInput(full, { language }));
      expect(page.split(wordCaution('local-code', language))).toHaveLength(2);
    }
  });

  it('leads with what the camera saw where it saw something', () => {
    const page = homeownerPage(ownerInput(full));
    expect(page).toContain('Roots have filled this pipe.');
    expect(page).toContain('The camera saw roots that fill the pipe in 2026.');
  });

  it('gives no odds where too little is known', () => {
    const input = ownerInput(lot);
    const unsure = { ...input, segment: { ...input.segment, band: 'cannot-say' as const } };
    const page = homeownerPage(unsure);
    expect(page).toContain('We do not know enough to say yet.');
    expect(page).not.toContain('class="tens"');
    expect(page).not.toContain('class="curve"');
  });

  it('shows choices with prices, the advice first, what is not possible with its reason', () => {
    const input = ownerInput(full);
    const text = readText(homeownerPage(input)).join('\n');
    expect(input.decided?.recommended).not.toBeNull();
    expect(text).toContain('What can be done');
    expect(text).toMatch(/Not possible here: .*\(roots fill the pipe\)/);
    expect(text).toContain('These prices are invented');
    const rows = elements(parsed(homeownerPage(input))).filter((one) => one.getAttribute('class') === 'best');
    expect(rows).toHaveLength(1);
    expect(rows[0]?.textContent).toContain('our advice');
    expect(rows[0]?.textContent).toMatch(/\$[\d,]+/);
  });

  it('leaves the choices out where none were worked out, and tells what would lower the odds', () => {
    const text = readText(homeownerPage(ownerInput(lot, { choices: false }))).join('\n');
    expect(text).not.toContain('What can be done');
    expect(text).toMatch(/What would lower the odds\n.*: down to/);
  });

  it('names who made the estimate, or leaves a line to sign on', () => {
    expect(homeownerPage(ownerInput(lot, { by: 'Someone & Co' }))).toContain('by Someone &amp; Co.');
    expect(homeownerPage(ownerInput(lot))).toContain('class="blank"');
  });

  it('says that an invented place is invented', () => {
    expect(homeownerPage(ownerInput(lot))).toContain('Invented example');
    const real = ownerInput({ ...lot, invented: false });
    expect(homeownerPage(real)).not.toContain('Invented example');
  });

  it('speaks feet or metres, and Spanish', () => {
    const text = (units: 'us' | 'metric', language: 'en' | 'es') =>
      readText(homeownerPage(ownerInput(lot, { units, language, choices: false })))
        .filter((line) => !/0\.6|1\.5 m|5 cm/.test(line))
        .join('\n');
    expect(text('us', 'en')).toMatch(/\d ft up the pipe/);
    expect(text('metric', 'en')).not.toMatch(/\d (?:ft|in)\b(?! 10)/);
    expect(text('metric', 'es')).toMatch(/de 5(?:\.\d)? a \d(?:\.\d)? m tubo arriba/);
    expect(text('us', 'es')).toContain('El olmo está a 10 ft del tubo.');
    expect(text('us', 'es')).not.toMatch(/\b(?:the|roots|pipe)\b/i);
  });

  it('marks its language', () => {
    expect(parsed(homeownerPage(ownerInput(lot, { language: 'es' }))).getAttribute('lang')).toBe('es');
  });
});

describe('photos', () => {
  const withPhoto = (photo: string) =>
    homeownerPage(
      ownerInput(
        siteOf('corner-lot', [finding({ drain: 'tail', from: 'CO1', at_ft: 12, seen: 'fine', photo })]),
      ),
    );

  it('are shown with what they show, at most three', () => {
    const many = Array.from({ length: 5 }, (_, i) =>
      finding({
        drain: 'tail',
        from: 'CO1',
        at_ft: 10 + i,
        seen: 'fine',
        date: String(2020 + i),
        photo: PIXEL,
      }),
    );
    const page = homeownerPage(ownerInput(siteOf('corner-lot', many)));
    const images = elements(parsed(page)).filter(({ nodeName }) => nodeName === 'img');
    expect(images).toHaveLength(3);
    expect(images[0]?.getAttribute('alt')).toBe('Photo from inside the pipe: fine roots');
    expect(page).toContain('Fine roots, ');
    expect(page).toContain(', 2024</figcaption>');
  });

  it.each([
    'https://example.org/a.png',
    'data:text/html;base64,PGI+',
    'data:image/svg+xml;base64,PHN2Zz4=',
    'data:image/png;base64,AAAA" onerror="x',
    'javascript:alert(1)',
    'b1.png',
  ])('are left out where they are no image data: %s', (photo) => {
    expect(withPhoto(photo)).not.toContain('<img');
  });
});
