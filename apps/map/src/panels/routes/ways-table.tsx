import type { RouteAlternative, RouteResult } from '@rootreach/core';
import { patternOf } from '../../layers/route-pattern.js';
import * as measure from '../../measure.js';
import * as route from '../../plan-route/route-state.js';
import * as state from '../../state.js';
import { words } from '../../words/words.js';

const w = () => words.value.routes;

const worstTree = ({ trees }: RouteAlternative): number =>
  trees.reduce((worst, { severedShare }) => Math.max(worst, severedShare), 0);

function depthOf({ depthM }: RouteAlternative): string {
  const units = state.units.value;
  if (depthM === null) return w().unknownDepth;
  const [low, high] = [measure.depth(depthM.min, units), measure.depth(depthM.max, units)];
  return low === high ? low : `${low} – ${high}`;
}

type Row = readonly [name: string, of: (one: RouteAlternative) => string];

function rowsFor(currency: string): Row[] {
  const { figures, chance, money, severed, noHarm } = w();
  const units = state.units.value;
  return [
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

function Pattern({ index }: { readonly index: number }) {
  return (
    <svg class="route-pattern" viewBox="0 0 44 8" width="44" height="8" aria-hidden="true">
      <path
        d="M1 4H43"
        stroke="currentColor"
        stroke-width="3.5"
        fill="none"
        stroke-dasharray={patternOf(index)}
      />
    </svg>
  );
}

/** The alternatives side by side; the chosen one as it was pulled. */
export function WaysTable({ result }: { readonly result: RouteResult }) {
  const shown = result.alternatives.map((one) =>
    one.id === route.chosenId.value && route.drawn.value ? { ...route.drawn.value, id: one.id } : one,
  );
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than a phone is scrolled by keys
    <section class="route-table" tabIndex={0} aria-label={w().ways}>
      <table>
        <thead>
          <tr>
            <td />
            {shown.map((one, index) => (
              <th key={one.id} scope="col">
                <button
                  type="button"
                  class="route-head"
                  aria-pressed={one.id === route.chosenId.value}
                  onClick={() => {
                    route.drawn.value = null;
                    route.chosenId.value = one.id;
                  }}
                >
                  {w().aims[one.aim]}
                  <Pattern index={index} />
                </button>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rowsFor(result.currency).map(([name, of]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              {shown.map((one) => (
                <td key={one.id} class={one.id === route.chosenId.value ? 'route-chosen' : ''}>
                  {of(one)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
