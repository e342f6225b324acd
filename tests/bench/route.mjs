// Benchmark: all alternatives for a new line on a 60 x 60 m lot with 20 trees, against one plain 8-neighbour A* on the
// same lattice, with the gain in route cost beside it. Needs a build.
//   npm run build && node tests/bench/route.mjs          5 lots, 5 rounds each
//   node tests/bench/route.mjs reference 50              cost of 50 lots against a lattice four times as fine
import { planRoute, readSite } from '../../packages/core/dist/index.js';
import { cheapestPath } from '../../packages/core/dist/route/cheapest-path.js';
import { SceneFields } from '../../packages/core/dist/route/field-of-scene.js';
import { sceneOf } from '../../packages/core/dist/route/scene.js';
import { routeLot } from './route-lot.mjs';
import { plainAStar } from './route-plain.mjs';

const BALANCED = { dig: 1, roots: 1, harm: 1 };
const siteOf = (shape) => readSite([{ name: 'lot', text: JSON.stringify(routeLot(shape)) }]).site;
const request = (more = {}) => ({
  asOf: '2026-11-25',
  from: { id: 'source' },
  to: [{ id: 'outlet' }],
  pipe: { material: 'pvc-sdr35', sizeM: 0.1016 },
  ...more,
});
const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
const priceOf = (field, points) =>
  points.slice(1).reduce((sum, b, i) => sum + field.between(...points[i], ...b), 0);

function timed(work) {
  const start = performance.now();
  const result = work();
  return [performance.now() - start, result];
}

function speed(lots, rounds) {
  const all = { plan: [], plain: [], gain: [] };
  for (let seed = 1; seed <= lots; seed++) {
    const site = siteOf({ seed });
    const fields = new SceneFields(sceneOf(site, request()));
    const field = fields.weighted(BALANCED);
    const { from, to } = fields.scene;
    const plan = [];
    const plain = [];
    for (let round = 0; round < rounds; round++) {
      plan.push(timed(() => planRoute(site, request()))[0]);
      plain.push(timed(() => plainAStar(field, from, [to[0].x, to[0].y]))[0]);
    }
    const stairs = [from, ...plainAStar(field, from, [to[0].x, to[0].y]), [to[0].x, to[0].y]];
    const ours = cheapestPath(field, from, to);
    // plain steps may cut a corner that no trench may: such a lot tells nothing
    const gain = ours === null ? Number.NaN : 1 - priceOf(field, ours.points) / priceOf(field, stairs);
    all.plan.push(median(plan));
    all.plain.push(median(plain));
    if (gain < 1) all.gain.push(gain);
    console.log(
      `lot ${seed}: all alternatives ${median(plan).toFixed(0)} ms (least ${Math.min(...plan).toFixed(0)}), plain A* ${median(plain).toFixed(1)} ms, ratio ${(median(plan) / median(plain)).toFixed(0)}, route cost ${gain < 1 ? `${(100 * gain).toFixed(1)} % lower` : 'not compared'}`,
    );
  }
  console.log(
    `median: ${median(all.plan).toFixed(0)} ms, ratio ${(median(all.plan) / median(all.plain)).toFixed(0)}, gain ${(100 * median(all.gain)).toFixed(1)} %`,
  );
}

function reference(lots) {
  const over = [];
  for (let seed = 1; seed <= lots; seed++) {
    const site = siteOf({ seed, sizeM: 30, trees: 8, levels: false });
    const [usual, fine] = [{}, { cellM: 0.0625 }].map(
      (cell) => new SceneFields(sceneOf(site, request(cell))),
    );
    const judge = fine.weighted(BALANCED);
    const { from, to } = usual.scene;
    const path = cheapestPath(usual.weighted(BALANCED), from, to);
    const best = cheapestPath(judge, from, to);
    if (path === null || best === null) {
      console.log(`lot ${seed}: ${path === best ? 'no way' : 'a way on one lattice only'}`);
      continue;
    }
    over.push(priceOf(judge, path.points) / best.cost - 1);
    console.log(`lot ${seed}: ${(100 * over.at(-1)).toFixed(2)} % above the reference`);
  }
  const within = over.filter((share) => share < 0.01).length;
  console.log(
    `${within} of ${over.length} within 1 %, worst ${(100 * Math.max(...over)).toFixed(2)} %, median ${(100 * median(over)).toFixed(2)} %`,
  );
}

if (process.argv[2] === 'reference') reference(Number(process.argv[3] ?? 50));
else speed(Number(process.argv[2] ?? 5), Number(process.argv[3] ?? 5));
