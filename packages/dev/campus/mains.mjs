import { mainDepth } from './main-depth.mjs';
import { MAIN_REACHES, MAINS, TRUNKS } from './plan.mjs';
import { rounded } from './rounded.mjs';

/** The reaches of each main from its upper end, still without the corners that branches put on them. */
export function planMains() {
  const reaches = [];
  for (const main of MAINS) {
    const xs = [0, 1 / 3, 2 / 3, 1].map((share) => main.from + (main.to - main.from) * share);
    for (const [i, [material, year]] of MAIN_REACHES[main.key].entries()) {
      reaches.push({
        id: `${main.carries}-${main.key}-${i + 1}`,
        main,
        index: i,
        material,
        year,
        from: xs[i],
        to: xs[i + 1],
        corners: [],
      });
    }
  }
  return reaches;
}

/** Lays the reaches of the mains with a corner wherever a branch joins. */
export function addMains({ addDrain, addFitting }, reaches) {
  for (const reach of reaches) {
    const { main } = reach;
    const along = Math.sign(reach.to - reach.from);
    const corners = [...new Set(reach.corners)].sort((a, b) => (a - b) * along);
    const share = (x) => (x - main.from) / (main.to - main.from);
    addDrain(
      [reach.from, ...corners, reach.to].map((x) => [x, main.y]),
      {
        id: reach.id,
        name: `${main.carries} main ${main.key.toUpperCase()}, reach ${reach.index + 1}`,
        material: reach.material,
        size_mm: main.sizes[reach.index],
        installed: String(reach.year),
        flow: 'as-drawn',
        carries: main.carries,
        depth_start_m: rounded(mainDepth(main.carries, share(reach.from)), 0.01),
        depth_end_m: rounded(mainDepth(main.carries, share(reach.to)), 0.01),
        ...(reach.material === 'pvc-sdr35' && main.carries === 'foul'
          ? { joint: 'gasket', seal_mpa: 0.3 }
          : {}),
      },
    );
    addFitting(main.carries === 'storm' ? 'basin' : 'cleanout', [reach.from, main.y], reach.id);
  }
}

/** Lays the trunks that take up the mains. */
export function addTrunks({ addDrain, addFitting }) {
  for (const trunk of TRUNKS) {
    for (const [i, [material, year]] of trunk.reaches.entries()) {
      const id = `${trunk.carries}-trunk-${i + 1}`;
      const top = mainDepth(trunk.carries, 1) + 0.1 + 0.2 * i;
      addDrain(
        [
          [trunk.x, trunk.y[i]],
          [trunk.x, trunk.y[i + 1]],
        ],
        {
          id,
          name: `${trunk.carries} trunk, reach ${i + 1}`,
          material,
          size_mm: trunk.size,
          installed: String(year),
          flow: 'as-drawn',
          carries: trunk.carries,
          depth_start_m: rounded(top, 0.01),
          depth_end_m: rounded(top + 0.2, 0.01),
        },
      );
      addFitting('basin', [trunk.x, trunk.y[i]], id);
    }
    addFitting('outlet', [trunk.x, trunk.y[2]], `${trunk.carries}-trunk-2`);
  }
}
