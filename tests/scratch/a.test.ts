import { it } from 'vitest';
import { observe, learn } from '/work/main/packages/core/src/learn/learn.js';
import { itemsOf } from '/work/main/packages/core/src/learn/items.js';
import { liftOf } from '/work/main/packages/core/src/learn/lift.js';
import { backtestBySite } from '/work/main/packages/core/src/learn/backtest.js';
import { townOf, AS_OF } from '../simulation/town.js';
it('x', () => {
  const r: number[][] = [];
  for (let i = 0; i < 20; i++) {
    const { sites, truth } = townOf({ seed: 1000 + i, sites: 6, linesPerSite: 5, truth: 'prior', lineCv: Number(process.env['CV']??0.5) });
    const recs = sites.map((s, k) => ({ name: `s${k}`, items: itemsOf(s, `s${k}`, { asOf: AS_OF }), observations: observe(s, { asOf: AS_OF }).observations }));
    const items = recs.flatMap((x) => x.items);
    const un = liftOf(items.map((x) => ({ ...x, score: x.expected / x.lengthM })))!.area;
    const or = liftOf(items.map((x) => ({ ...x, score: x.expected * (truth.get(x.group) ?? 1) / x.lengthM })))!.area;
    const b = backtestBySite(recs, 1)!;
    r.push([un, b.auc, or, b.baselines.nearestTree.auc, b.baselines.age.auc, items.filter(x=>x.found).length, items.length]);
  }
  console.log(r[0]!.map((_, k) => (r.reduce((a, x) => a + x[k]!, 0) / r.length).toFixed(3)).join(' '));
}, 600000);
