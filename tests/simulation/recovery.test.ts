import { it } from 'vitest';
import { studyTown, summaryOf } from './study.js';
const N = Number(process.env['ROOTREACH_TOWNS'] ?? 60);
it('x', () => {
  for (const [truth, lineCv] of [['prior', 0], ['prior', 0.5]] as const) {
    const t0 = Date.now();
    const s = Array.from({ length: N }, (_, i) => studyTown({ seed: 1000 + i, sites: 6, linesPerSite: Number(process.env['LPS'] ?? 5), truth, lineCv }, false));
    console.log(truth, lineCv, JSON.stringify(summaryOf(s)), 'E', s.flatMap(x=>x.groups).reduce((a,g)=>a+g.expected,0)/s.flatMap(x=>x.groups).length, 'f', s.reduce((a,x)=>a+x.findings,0)/N, Date.now() - t0);
  }
}, 600000);
