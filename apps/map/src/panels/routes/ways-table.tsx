import type { RouteAlternative, RouteResult } from '@rootreach/core';
import * as measure from '../../measure.js';
import * as route from '../../plan-route/route-state.js';
import * as state from '../../state.js';
import { words } from '../../words/words.js';
import { FiguresTable, type Row } from './figures-table.js';
import { outletOf } from './line-names.js';

const w = () => words.value.routes;

const worstTree = ({ trees }: RouteAlternative): number =>
  trees.reduce((worst, { severedShare }) => Math.max(worst, severedShare), 0);

function depthOf({ depthM }: RouteAlternative): string {
  const units = state.units.value;
  if (depthM === null) return w().unknownDepth;
  const [low, high] = [measure.depth(depthM.min, units), measure.depth(depthM.max, units)];
  return low === high ? low : `${low} – ${high}`;
}

function rowsFor(currency: string): Row<RouteAlternative>[] {
  const { figures, chance, money, severed, noHarm } = w();
  const units = state.units.value;
  const several = route.placesOf('to').length > 1;
  return [
    ...(several ? [[figures.outlet, outletOf] as const] : []),
    [figures.length, (one) => measure.length(one.lengthM, units)],
    [figures.now, (one) => money(one.cost.now, currency)],
    [figures.present, (one) => money(one.cost.presentValue, currency)],
    [figures.ten, (one) => chance(one.chance['10'])],
    [figures.twentyFive, (one) => chance(one.chance['25'])],
    [figures.joints, (one) => `${one.joints.nearRoots} / ${one.joints.count}`],
    [figures.bends, (one) => String(one.bends)],
    [figures.depth, depthOf],
    [figures.worst, (one) => (worstTree(one) > 0 ? severed(worstTree(one)) : noHarm)],
  ];
}

/** The alternatives side by side; the chosen one as it was pulled. */
export function WaysTable({ result }: { readonly result: RouteResult }) {
  const isChosen = ({ id }: RouteAlternative): boolean => id === route.chosenId.value;
  return (
    <FiguresTable
      label={w().ways}
      columns={result.alternatives.map((one) => ({
        key: one.id,
        name: w().aims[isChosen(one) && route.drawn.value ? 'drawn' : one.aim],
        isChosen: isChosen(one),
        choose: () => {
          route.drawn.value = null;
          route.chosenId.value = one.id;
        },
        of: isChosen(one) && route.drawn.value ? route.drawn.value : one,
      }))}
      rows={rowsFor(result.currency)}
    />
  );
}
