import { cite } from '../sources/cited.js';
import type { JointKey, JointRow } from './pipe-row.js';

/** The order is supported by field reports (tighter joints, fewer roots); the numbers are ours. */
function joint(key: JointKey, name: string, factor: number, place: string): JointRow {
  return { key, name, factor: cite(factor, 'our-judgement', 'judgement', place) };
}

/** Openness of joints to roots; an unsealed rigid joint is 1. */
export const jointTable: readonly JointRow[] = [
  joint('none', 'no joint', 0, 'one piece'),
  joint('welded', 'heat-fused joint', 0.05, 'below solvent weld: no seam of another material'),
  joint(
    'solvent',
    'solvent-welded joint',
    0.1,
    'no root passed welded caps in a pot trial, but welds are missed',
  ),
  joint('gasket', 'gasketed bell joint', 0.25, 'rubber rings hold while their pressure lasts'),
  joint('band', 'banded coupling', 0.4, 'rubber sleeve under steel bands'),
  joint('taped', 'taped coupler', 0.5, 'tape loosens in wet ground'),
  joint('snap', 'push-fit or snap coupler', 0.8, 'keeps soil out, not water'),
  joint('mortar', 'mortar joint', 1, 'the reference: old rigid pipe'),
  joint('open', 'open butt joint', 1, 'nothing in the gap'),
];

const rows: ReadonlyMap<string, JointRow> = new Map(jointTable.map((row) => [row.key, row]));

/**
 * A kind of joint as the table has it: its name, and how open it is to roots.
 * @throws RangeError when the key is not in the table.
 */
export function jointRow(key: JointKey): JointRow {
  const row = rows.get(key);
  if (row === undefined) throw new RangeError(`no joint of kind '${key}'`);
  return row;
}
