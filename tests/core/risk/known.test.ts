import { readFileSync } from 'node:fs';
import { Geodesic } from 'geographiclib-geodesic';
import { describe, expect, it } from 'vitest';
import { wordMisplaced } from '../../../packages/core/src/explain/misplaced-words.js';
import { layOutLines } from '../../../packages/core/src/line/line-model.js';
import type { SegmentResult } from '../../../packages/core/src/model/result.js';
import type { LonLat, Site } from '../../../packages/core/src/model/site.js';
import { placeFindings } from '../../../packages/core/src/risk/known.js';
import { rank } from '../../../packages/core/src/risk/rank.js';
import { readSite } from '../../../packages/core/src/validate/read-site.js';
import { type Scene, scene } from '../../scenes/scene.js';

type Finding = Readonly<Record<string, unknown>>;

const metres = (lengthM: number) => `${lengthM.toFixed(lengthM < 100 ? 1 : 0)} m`;

/** 12 m in four segments; readings count from the outlet end. */
function segments(findings: readonly Finding[], drain: Finding = {}): readonly SegmentResult[] {
  const start: Scene = scene()
    .drain({
      id: 'main',
      path: [
        [12, 0],
        [0, 0],
      ],
      flow: 'as-drawn',
      material: 'pvc-sdr35',
      installed: 1990,
      ...drain,
    })
    .tree({ id: 't', at: [6, 4], species: 'Betula nigra', dbh_cm: 30 });
  const made = findings.reduce<Scene>(
    (grown, finding) => grown.finding({ drain: 'main', from: 'end', ...finding }),
    start,
  );
  const { segments: found } = rank(made.site(), { asOf: '2026-11-25', segmentM: 3 });
  return [...found].sort((a, b) => a.startM - b.startM);
}

const seenIn = (findings: readonly Finding[], drain?: Finding) =>
  segments(findings, drain).map((s) => s.known?.seen ?? null);

describe('what is known of a segment', () => {
  it('is what was seen in any part of it', () => {
    expect(seenIn([{ at_m: 2.5, to_m: 3.5, seen: 'fine' }])).toEqual(['fine', 'fine', null, null]);
    expect(seenIn([{ at_m: 4, seen: 'mass' }])).toEqual([null, 'mass', null, null]);
  });

  it('stays in the segments between its readings, though a reading and a border differ by a rounding', () => {
    for (const from of ['start', 'end']) {
      for (const [at, to] of [
        [3, 6],
        [6, 9],
        [3, 9],
      ] as const) {
        const want = [0, 3, 6, 9].map((border) => (border >= at && border < to ? 'mass' : null));
        const read = from === 'end' ? { at_m: at, to_m: to } : { at_m: 12 - to, to_m: 12 - at };
        expect(seenIn([{ ...read, from, seen: 'mass' }]), `${at} to ${to} m from the ${from}`).toEqual(want);
      }
    }
  });

  it('at the very ends of the line is not lost', () => {
    expect(seenIn([{ at_m: 0, seen: 'mass' }])).toEqual(['mass', null, null, null]);
    expect(seenIn([{ at_m: 12, seen: 'mass' }])).toEqual([null, null, null, 'mass']);
    expect(seenIn([{ at_m: 12.3, seen: 'mass' }])).toEqual([null, null, null, 'mass']);
  });

  // scores are for 25 November 2026; a bare year stands for its middle, and may be of this year up to half a year ahead
  it.each([
    ['2026-11-20', 'mass'],
    [2026, 'mass'],
    ['2027-04-01', 'mass'],
    ['2027-06-15', null],
    [2028, null],
  ])('is not what was seen only later: %s', (date, seen) => {
    expect(seenIn([{ at_m: 1, seen: 'mass', date }])[0]).toBe(seen);
  });

  it('is the newest sight, for better or worse', () => {
    const old = { at_m: 0, to_m: 3, seen: 'mass', date: 2015 };
    expect(seenIn([old, { at_m: 0, to_m: 3, seen: 'clear', date: 2020 }])[0]).toBeNull();
    expect(seenIn([{ at_m: 0, to_m: 3, seen: 'clear', date: 2010 }, old])[0]).toBe('mass');
  });

  it('is the worst of one day', () => {
    const day = { at_m: 0, to_m: 3, date: '2025-03-02' };
    expect(
      seenIn([
        { ...day, seen: 'fine' },
        { ...day, seen: 'mass' },
        { ...day, seen: 'clear' },
      ])[0],
    ).toBe('mass');
  });

  it('is the worst of those without a date, in whatever order they come', () => {
    const fine = { at_m: 0, to_m: 3, seen: 'fine' };
    const mass = { at_m: 0, to_m: 3, seen: 'mass' };
    expect(seenIn([fine, mass])[0]).toBe('mass');
    expect(seenIn([mass, fine])[0]).toBe('mass');
    expect(seenIn([mass, { ...fine, date: 2024 }])[0]).toBe('fine');
  });

  it('is dealt with by a digging or a new pipe since', () => {
    const crushed = [{ at_m: 0, to_m: 3, seen: 'crushed', date: 2020 }];
    expect(seenIn(crushed)[0]).toBe('crushed');
    expect(seenIn(crushed, { dug: 2022 })[0]).toBeNull();
    expect(seenIn(crushed, { dug: 2018 })[0]).toBe('crushed');
    expect(seenIn(crushed, { installed: 2023 })[0]).toBeNull();
  });

  it('is dealt with by cutting inside only where it was roots', () => {
    const sight = (seen: string) => [{ at_m: 0, to_m: 3, seen, date: 2020 }];
    for (const roots of ['fine', 'mass', 'full']) expect(seenIn(sight(roots), { cut: 2022 })[0]).toBeNull();
    for (const fault of ['crushed', 'sag', 'offset'])
      expect(seenIn(sight(fault), { cut: 2022 })[0]).toBe(fault);
  });

  it('without a date stands whatever was done', () => {
    expect(seenIn([{ at_m: 0, to_m: 3, seen: 'mass' }], { dug: 2022 })[0]).toBe('mass');
  });

  it('puts severe trouble first and into the band to act', () => {
    const ranked = segments([{ at_m: 10, seen: 'full', blocked_pct: 100, date: 2025 }]);
    expect(ranked[3]).toMatchObject({ rank: 1, band: 'act', known: { seen: 'full', blockedShare: 1 } });
  });

  it('is reported where it names no line', () => {
    const made = scene()
      .drain({
        id: 'main',
        path: [
          [12, 0],
          [0, 0],
        ],
        flow: 'as-drawn',
      })
      .finding({ id: 'seen', drain: 'mian', at_m: 1, seen: 'fine' });
    const { issues } = rank(made.site(), { asOf: '2026-11-25' });
    expect(issues).toMatchObject([
      { code: 'finding-misplaced', severity: 'error', reason: { kind: 'no-line', line: 'mian' } },
    ]);
  });
});

/** Pieces of all findings as [line, from, to, direction], and the reasons against those that have no place. */
function placedIn(site: Site) {
  const lines = layOutLines(site, 3);
  const { byLine, issues } = placeFindings(site, lines);
  // to the millimetre: each line is measured in a plane of its own
  const rounded = (m: number): number => Math.round(m * 1e3) / 1e3;
  const pieces = [...byLine].flatMap(([number, found]) => {
    return found.map((piece): [string, number, number, string] => {
      expect(piece.line).toBe(number);
      return [lines.at(number).drain.id, rounded(piece.fromM), rounded(piece.toM), piece.direction];
    });
  });
  return {
    pieces,
    reasons: issues.map((issue) =>
      issue.code === 'finding-misplaced' ? wordMisplaced(issue.reason, metres) : issue.code,
    ),
  };
}

/** A main of 30 m with a branch of 8 m that comes in 18 m above its lower end, and a tail of 12 m after it. */
const network = (): Scene =>
  scene()
    .drain({
      id: 'main',
      path: [
        [0, 0],
        [30, 0],
      ],
      flow: 'as-drawn',
    })
    .drain({
      id: 'arm',
      path: [
        [12, 8],
        [12, 0],
      ],
      flow: 'as-drawn',
    })
    .drain({
      id: 'tail',
      path: [
        [30, 0],
        [42, 0],
      ],
      flow: 'as-drawn',
    })
    .drain({
      id: 'apart',
      path: [
        [0, 60],
        [9, 60],
      ],
      flow: 'as-drawn',
    })
    .fitting({ id: 'B', type: 'basin', at: [0, 0] })
    .fitting({ id: 'D', type: 'downspout', at: [12, 8] })
    .fitting({ id: 'T', type: 'tee', at: [12, 0] })
    .fitting({ id: 'C', type: 'cleanout', at: [27, 0] })
    .fitting({ id: 'O', type: 'outlet', at: [42, 0] })
    .fitting({ id: 'P', type: 'basin', at: [0, 60] });

const placed = (...findings: Finding[]) =>
  placedIn(findings.reduce<Scene>((grown, f) => grown.finding({ seen: 'mass', ...f }), network()).site());

describe('a finding along the pipes', () => {
  it('lies in the main as far below the branch as the counter ran on', () => {
    expect(placed({ drain: 'main', from: 'D', at_m: 10 }).pieces).toEqual([['main', 16, 16, 'downstream']]);
  });

  it('lies in the branch when the reel was pushed up from the main', () => {
    expect(placed({ drain: 'arm', from: 'C', at_m: 17, to_m: 20 }).pieces).toEqual([
      ['arm', 2, 5, 'upstream'],
    ]);
  });

  it('lies in the branch from the tee at its foot, and in the main from the same tee', () => {
    expect(placed({ drain: 'arm', from: 'T', at_m: 3 }).pieces).toEqual([['arm', 3, 3, 'upstream']]);
    expect(placed({ drain: 'main', from: 'T', at_m: 3 }).pieces).toEqual([['main', 21, 21, 'upstream']]);
    expect(placed({ drain: 'main', from: 'T', at_m: 3, direction: 'downstream' }).pieces).toEqual([
      ['main', 15, 15, 'downstream'],
    ]);
  });

  it('lies two lines on', () => {
    expect(placed({ drain: 'tail', from: 'D', at_m: 31 }).pieces).toEqual([['tail', 7, 7, 'downstream']]);
    expect(placed({ drain: 'arm', from: 'O', at_m: 33 }).pieces).toEqual([['arm', 3, 3, 'upstream']]);
  });

  it('lies on both lines where it begins on one and ends on the next, whichever is named', () => {
    const both = [
      ['arm', 0, 2, 'downstream'],
      ['main', 15, 18, 'downstream'],
    ];
    const seen = { from: 'D', at_m: 6, to_m: 11 };
    expect(new Set(placed({ ...seen, drain: 'main' }).pieces)).toEqual(new Set(both));
    expect(new Set(placed({ ...seen, drain: 'arm' }).pieces)).toEqual(new Set(both));
    expect(new Set(placed({ drain: 'main', from: 'D', at_m: 11, to_m: 6 }).pieces)).toEqual(new Set(both));
  });

  it('covers a whole line between two others', () => {
    expect(new Set(placed({ drain: 'main', from: 'D', at_m: 7, to_m: 28 }).pieces)).toEqual(
      new Set([
        ['arm', 0, 1, 'downstream'],
        ['main', 0, 18, 'downstream'],
        ['tail', 10, 12, 'downstream'],
      ]),
    );
  });

  it('counts its entries only where it lies on one line', () => {
    const site = network()
      .finding({ drain: 'main', from: 'D', at_m: 6, to_m: 11, seen: 'mass', entries: 4 })
      .finding({ drain: 'tail', from: 'C', at_m: 6, to_m: 11, seen: 'mass', entries: 2 })
      .site();
    const pieces = [...placeFindings(site, layOutLines(site, 3)).byLine.values()].flat();
    expect(pieces.map((piece) => piece.entries).sort()).toEqual([2, null, null]);
  });

  it('is known in the segments of both lines', () => {
    const site = network()
      .tree({ id: 't', at: [14, 4], species: 'Betula nigra', dbh_cm: 30 })
      .finding({ drain: 'main', from: 'D', at_m: 6, to_m: 11, seen: 'mass' })
      .site();
    const { segments: ranked } = rank(site, { asOf: '2026-11-25', segmentM: 3 });
    const known = ranked.filter((segment) => segment.known !== null);
    expect(new Set(known.map((segment) => segment.drainId))).toEqual(new Set(['arm', 'main']));
  });

  it('stops at the border where the counter is off by less than half a metre', () => {
    expect(placed({ drain: 'main', from: 'D', at_m: 7.7 }).pieces).toEqual([['main', 18, 18, 'downstream']]);
    expect(placed({ drain: 'arm', from: 'D', at_m: 8.4 }).pieces).toEqual([['arm', 0, 0, 'downstream']]);
    expect(placed({ drain: 'tail', from: 'D', at_m: 38.4 }).pieces).toEqual([['tail', 0, 0, 'downstream']]);
  });

  it('goes from one line into the next through a basin that neither quite reaches', () => {
    const made = scene()
      .drain({
        id: 'up',
        path: [
          [0, 0],
          [9.5, 0],
        ],
        flow: 'as-drawn',
      })
      .drain({
        id: 'down',
        path: [
          [10.5, 0],
          [20, 0],
        ],
        flow: 'as-drawn',
      })
      .fitting({ id: 'D', type: 'downspout', at: [0, 0] })
      .fitting({ id: 'B', type: 'basin', at: [10, 0] })
      .finding({ drain: 'down', from: 'D', at_m: 12, seen: 'fine' })
      .finding({ drain: 'down', from: 'B', at_m: 3, seen: 'fine' })
      .finding({ drain: 'up', from: 'B', at_m: 3, seen: 'fine' });
    expect(placedIn(made.site()).pieces).toEqual([
      ['down', 7, 7, 'downstream'],
      ['down', 6.5, 6.5, 'downstream'],
      ['up', 3, 3, 'upstream'],
    ]);
  });
});

describe('a finding that cannot be where the counter says', () => {
  const why = (finding: Finding): string[] => {
    const { pieces, reasons } = placed(finding);
    expect(pieces).toEqual([]);
    return reasons;
  };

  it('names no line or fitting of the site', () => {
    expect(why({ drain: 'mian', at_m: 1 })).toEqual(["there is no line 'mian'"]);
    expect(why({ drain: 'main', from: 'X9', at_m: 1 })).toEqual(["there is no fitting 'X9'"]);
  });

  it('names a fitting that lies on no line', () => {
    const made = network()
      .fitting({ id: 'F', type: 'cleanout', at: [20, 30] })
      .finding({ drain: 'main', from: 'F', at_m: 1, seen: 'fine' });
    expect(placedIn(made.site())).toEqual({ pieces: [], reasons: ["fitting 'F' lies on no line"] });
  });

  it('has no way to the line, or only one that turns back at a branch', () => {
    const no = (from: string, drain: string): string =>
      `there is no way along the pipes from fitting '${from}' to line '${drain}' within 500 m and without turning back`;
    expect(why({ drain: 'main', from: 'P', at_m: 1 })).toEqual([no('P', 'main')]);
    expect(why({ drain: 'arm', from: 'B', at_m: 20 })).toEqual([no('B', 'arm')]);
  });

  it('ran past the end of the pipes', () => {
    expect(why({ drain: 'tail', from: 'D', at_m: 40 })).toEqual([
      "the reel ran 2.0 m past the end of line 'tail'",
    ]);
    expect(why({ drain: 'arm', from: 'C', at_m: 20, to_m: 25.5 })).toEqual([
      "the reel ran 2.5 m past the end of line 'arm'",
    ]);
  });

  it('was seen on another line by the counter', () => {
    expect(why({ drain: 'main', from: 'D', at_m: 5 })).toEqual([
      "the counter points at line 'arm', 3.0 m before line 'main' is reached",
    ]);
    expect(why({ drain: 'tail', from: 'D', at_m: 11, to_m: 20 })).toEqual([
      "the counter points at line 'main', 6.0 m before line 'tail' is reached",
    ]);
    expect(why({ drain: 'arm', from: 'D', at_m: 12 })).toEqual([
      "the counter points at line 'main', 4.0 m past the end of line 'arm'",
    ]);
  });

  it('came to a place where two pipes go on', () => {
    const made = network()
      .drain({
        id: 'spill',
        path: [
          [30, 0],
          [30, -9],
        ],
        flow: 'as-drawn',
      })
      .finding({ drain: 'main', from: 'C', at_m: 0, to_m: 6, direction: 'downstream', seen: 'fine' });
    expect(placedIn(made.site()).reasons).toEqual([
      "the reel ran 3.0 m past the end of line 'main', where several pipes go on and nothing tells which",
    ]);
  });
});

/**
 * Distances by Karney, C. F. F. (2013): Algorithms for geodesics. Journal of Geodesy 87:43-55, as the package
 * geographiclib-geodesic. Tolerance 1 mm: the plane of a line this short is far better, what is asked is the way.
 */
function geodesicM(path: readonly LonLat[]): number {
  return path.slice(1).reduce((sum, [lon, lat], i) => {
    const [lon0, lat0] = path[i] as LonLat;
    return sum + (Geodesic.WGS84.Inverse(lat0, lon0, lat, lon).s12 as number);
  }, 0);
}

describe('the corner lot', () => {
  const file = JSON.parse(
    readFileSync(new URL('../../../data/sites/corner-lot.geojson', import.meta.url), 'utf8'),
  ) as { features: { properties: Finding; geometry: { coordinates: unknown } }[] };
  const coordinates = (id: string) =>
    file.features.find((f) => f.properties['id'] === id)?.geometry.coordinates;
  const pathOf = (id: string) => coordinates(id) as LonLat[];
  const read = (finding: Finding) => {
    const feature = {
      type: 'Feature',
      geometry: null,
      properties: { kind: 'finding', seen: 'mass', ...finding },
    };
    const text = JSON.stringify({ ...file, features: [...file.features, feature] });
    return placedIn(readSite([{ name: 'corner-lot.geojson', text }]).site);
  };
  const collector = pathOf('collector');
  const tailM = geodesicM(pathOf('tail'));
  const toTailM = geodesicM([coordinates('CO1') as LonLat, collector[collector.length - 1] as LonLat]);

  it('has the old tail within reach of the cleanout above it', () => {
    expect(read({ drain: 'tail', from: 'CO1', at_m: 5 }).pieces).toEqual([
      ['tail', expect.closeTo(tailM + toTailM - 5, 2), expect.closeTo(tailM + toTailM - 5, 2), 'downstream'],
    ]);
    expect(new Set(read({ drain: 'tail', from: 'CO1', at_m: 0.5, to_m: 5 }).pieces)).toEqual(
      new Set([
        ['collector', 0, expect.closeTo(toTailM - 0.5, 2), 'downstream'],
        ['tail', expect.closeTo(tailM + toTailM - 5, 2), expect.closeTo(tailM, 2), 'downstream'],
      ]),
    );
  });

  it('has the tail within reach of the patio, and the patio within reach of the curb', () => {
    const downM = geodesicM(pathOf('patio-branch')) + geodesicM(collector.slice(1));
    expect(read({ drain: 'tail', from: 'B2', at_m: downM + 4 }).pieces).toEqual([
      ['tail', expect.closeTo(tailM - 4, 2), expect.closeTo(tailM - 4, 2), 'downstream'],
    ]);
    const upM = tailM + geodesicM(collector.slice(1));
    expect(read({ drain: 'patio-branch', from: 'O1', at_m: upM + 1 }).pieces).toEqual([
      ['patio-branch', expect.closeTo(1, 2), expect.closeTo(1, 2), 'upstream'],
    ]);
  });

  it('has two drains apart', () => {
    expect(read({ drain: 'tail', from: 'DS2', at_m: 5 }).reasons).toEqual([
      "there is no way along the pipes from fitting 'DS2' to line 'tail' within 500 m and without turning back",
    ]);
  });
});
