import { describe, expect, it } from 'vitest';
import { pointAt } from '../../../packages/core/src/geometry/polyline.js';
import { depthAt, type LineModel, layOutLines } from '../../../packages/core/src/line/line-model.js';
import { type Scene, scene } from '../../scenes/scene.js';

const path = [
  [0, 0],
  [12, 0],
] as const;

function laidOut(made: Scene, id = 'main'): LineModel {
  const site = made.site();
  return layOutLines(site, 3).at(site.drains.findIndex((drain) => drain.id === id));
}

const main = (more: Readonly<Record<string, unknown>> = {}): Scene =>
  scene().drain({ id: 'main', path, flow: 'as-drawn', ...more });

describe('a line made ready', () => {
  it('is laid out from its outlet end', () => {
    const [x] = pointAt(laidOut(main()).polyline, 0);
    const [reversedX] = pointAt(laidOut(main({ flow: 'reversed' })).polyline, 0);
    expect(x).toBeCloseTo(6, 6);
    expect(reversedX).toBeCloseTo(-6, 6);
  });

  it('takes its depths to the right ends and is straight between', () => {
    const asDrawn = laidOut(main({ depth_start_m: 0.5, depth_end_m: 1.1 }));
    expect([depthAt(asDrawn, 0), depthAt(asDrawn, 6), depthAt(asDrawn, 12)].map((d) => d.toFixed(6))).toEqual(
      ['1.100000', '0.800000', '0.500000'],
    );
    expect(depthAt(laidOut(main({ depth_start_m: 0.5, depth_end_m: 1.1, flow: 'reversed' })), 0)).toBe(0.5);
  });

  it('uses one known depth for both ends and says where none is known', () => {
    expect(laidOut(main({ depth_end_m: 0.9 }))).toMatchObject({
      depthOutletM: 0.9,
      depthUpperM: 0.9,
      depthKnown: true,
    });
    expect(laidOut(main())).toMatchObject({ depthOutletM: 0.6, depthKnown: false });
  });

  it('takes the usual pieces and joints of its material where they are not given', () => {
    expect(laidOut(main({ material: 'pvc-sdr35' }))).toMatchObject({ joint: 'gasket' });
    expect(laidOut(main({ material: 'clay', piece_m: 0.6, joint: 'gasket' }))).toMatchObject({
      joint: 'gasket',
      pieceM: 0.6,
    });
    expect(laidOut(main({ joint: 'none' })).pieceM).toBeNull();
  });

  // common practice: count the sockets
  it('gives a basin one entry for each pipe that meets it', () => {
    const through = laidOut(main().fitting({ id: 'b', type: 'basin', at: [5, 0] }));
    const atEnd = laidOut(main().fitting({ id: 'b', type: 'basin', at: [0, 0.1] }));
    expect(through.fittings).toMatchObject([{ id: 'b', joints: 2 }]);
    expect(atEnd.fittings).toMatchObject([{ id: 'b', joints: 1 }]);
    expect(atEnd.fittings[0]?.stationM).toBe(atEnd.lengthM);
  });

  it('runs to its outlet, at whichever end that lies', () => {
    for (const [east, asDrawn] of [
      [12, true],
      [0, false],
    ] as const) {
      const made = scene()
        .drain({ id: 'main', path })
        .fitting({ id: 'o', type: 'outlet', at: [east, 0] });
      expect(laidOut(made)).toMatchObject({ flowsAsDrawn: asDrawn, flowBasis: 'fittings' });
    }
  });

  it('has fittings of one place in the order of their names, however they are written down', () => {
    const ids = (...order: string[]) =>
      laidOut(
        order.reduce((made, id) => made.fitting({ id, type: 'coupling', at: [5, 0] }), main()),
      ).fittings.map(({ id }) => id);
    expect(ids('a', 'b', 'c')).toEqual(['a', 'b', 'c']);
    expect(ids('c', 'a', 'b')).toEqual(['a', 'b', 'c']);
  });

  it('gives a wye its three joints once, to the line that runs through', () => {
    const made = main()
      .drain({
        id: 'branch',
        path: [
          [5, 0],
          [5, 6],
        ],
      })
      .fitting({ id: 'w', type: 'wye', at: [5, 0] });
    expect(laidOut(made).fittings).toMatchObject([{ id: 'w', joints: 3 }]);
    expect(laidOut(made, 'branch').fittings).toMatchObject([{ id: 'w', joints: 0, stationM: 0 }]);
  });

  it('gives a wye to the line it names', () => {
    const made = main()
      .drain({
        id: 'branch',
        path: [
          [5, 0],
          [5, 6],
        ],
      })
      .fitting({ id: 'w', type: 'wye', at: [5, 0], drain: 'branch' });
    expect(laidOut(made).fittings).toMatchObject([]);
    expect(laidOut(made, 'branch').fittings).toMatchObject([{ id: 'w', joints: 3 }]);
  });

  it('reports a fitting that is on no line', () => {
    const { issues } = layOutLines(
      main()
        .fitting({ id: 'lost', type: 'tee', at: [5, 2.5] })
        .site(),
      3,
    );
    expect(issues).toMatchObject([{ code: 'fitting-off-line', distanceM: null, place: { feature: 'lost' } }]);
    const named = main().fitting({ id: 'far', type: 'tee', at: [5, 2.5], drain: 'main' });
    expect(layOutLines(named.site(), 3).issues).toMatchObject([
      { code: 'fitting-off-line', distanceM: expect.closeTo(2.5, 4) },
    ]);
  });
});
