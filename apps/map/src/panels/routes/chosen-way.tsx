import type { RouteAlternative, RouteResult } from '@rootreach/core';
import * as measure from '../../measure.js';
import * as route from '../../plan-route/route-state.js';
import { adopt } from '../../plan-route/run-route.js';
import * as state from '../../state.js';
import { words } from '../../words/words.js';
import { TreesNear } from './trees-near.js';

const w = () => words.value.routes;

const lengthOf = (chosen: RouteAlternative, way: 'bored' | 'hand-dug'): number =>
  chosen.stretches.reduce((sum, one) => sum + (one.way === way ? one.toM - one.fromM : 0), 0);

/** What is to be known of the chosen way before it is put on the sketch. */
export function ChosenWay({
  chosen,
  result,
}: {
  readonly chosen: RouteAlternative;
  readonly result: RouteResult;
}) {
  const units = state.units.value;
  const boredM = lengthOf(chosen, 'bored');
  const handDugM = lengthOf(chosen, 'hand-dug');
  const forbidden = chosen.breaks.length > 0;
  return (
    <>
      {forbidden && (
        <p class="known" role="status">
          {w().breaks}
        </p>
      )}
      {chosen.crossings.length > 0 && <p>{w().crossings(chosen.crossings.length)}</p>}
      {boredM > 0.05 && <p>{w().bored(measure.length(boredM, units))}</p>}
      {handDugM > 0.05 && <p>{w().handDug(measure.length(handDugM, units))}</p>}
      <TreesNear trees={chosen.trees} />
      {chosen.bends > 0 && <p class="quiet">{w().pullHint}</p>}
      <button type="button" class="button button-first" disabled={forbidden} onClick={() => void adopt()}>
        {w().adopt}
      </button>
      {result.pipes.length > 0 && route.drawn.value === null && (
        <details>
          <summary>{w().pipes}</summary>
          <ul>
            {result.pipes.map((pipe) => (
              <li key={pipe.id}>
                {w().pipeRow(
                  w().pipeName(pipe),
                  w().chance(pipe.chance['25']),
                  w().money(pipe.cost.now, result.currency),
                )}
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}
