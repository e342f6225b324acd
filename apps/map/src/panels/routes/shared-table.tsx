import type { SharedWay } from '@rootreach/core';
import * as measure from '../../measure.js';
import * as shared from '../../plan-route/shared-state.js';
import * as state from '../../state.js';
import { words } from '../../words/words.js';
import { FiguresTable } from './figures-table.js';

const w = () => words.value.routes;

/** Lines that share a main beside a line for each start. */
export function SharedTable({ currency }: { readonly currency: string }) {
  const { figures, chance, money, severed, noHarm } = w();
  const units = state.units.value;
  const worst = ({ trees }: SharedWay): number => Math.max(0, ...trees.map((tree) => tree.severedShare));
  return (
    <FiguresTable
      label={w().ways}
      columns={shared.ways.value.map((way) => ({
        key: way.shape,
        name: w().shared.shapes[way.shape],
        isChosen: way === shared.way.value,
        choose: () => {
          shared.shape.value = way.shape;
        },
        of: way,
      }))}
      rows={[
        [figures.length, (way) => measure.length(way.lengthM, units)],
        [figures.now, (way) => money(way.cost.now, currency)],
        [figures.present, (way) => money(way.cost.presentValue, currency)],
        [figures.ten, (way) => chance(way.chance['10'])],
        [figures.twentyFive, (way) => chance(way.chance['25'])],
        [figures.joints, (way) => `${way.joints.nearRoots} / ${way.joints.count}`],
        [figures.worst, (way) => (worst(way) > 0 ? severed(worst(way)) : noHarm)],
      ]}
    />
  );
}
