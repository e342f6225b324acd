import { useEffect, useRef } from 'preact/hooks';
import * as route from '../../plan-route/route-state.js';
import { cancelPlan, forgetRoute, planNow } from '../../plan-route/run-route.js';
import * as shared from '../../plan-route/shared-state.js';
import * as sketch from '../../sketch/sketch.js';
import * as state from '../../state.js';
import { words } from '../../words/words.js';
import { Notes, NoWay } from './answer-notes.js';
import { ChosenWay } from './chosen-way.js';
import { PipeChoice } from './pipe-choice.js';
import { Picking, Places, RainEntry } from './place-choice.js';
import { SharedAnswer } from './shared-answer.js';
import { WaysTable } from './ways-table.js';

const w = () => words.value.routes;

function Via() {
  const picking = route.picking.value === 'via';
  return (
    <div class="route-place-row">
      <button
        type="button"
        class="button"
        aria-pressed={picking}
        onClick={() => {
          route.picking.value = picking ? null : 'via';
        }}
      >
        {w().via}
      </button>
      {route.via.value && (
        <button
          type="button"
          class="button"
          onClick={() => {
            route.via.value = null;
          }}
        >
          {w().drop}
        </button>
      )}
      {picking && <Picking picking="via" />}
    </div>
  );
}

function Answer() {
  const result = route.result.value;
  const chosen = route.chosen.value;
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => place.current?.scrollIntoView({ block: 'start' }), [result]);
  if (!result) return null;
  const { none } = result;
  return (
    <div class="route-answer" ref={place}>
      {result.alternatives.length > 0 && <h2>{w().ways}</h2>}
      {none && <NoWay none={none} />}
      {result.alternatives.length > 0 && <WaysTable result={result} />}
      {chosen && <ChosenWay chosen={chosen} result={result} />}
      <Notes result={result} />
    </div>
  );
}

/** A new line from where water comes in to where it may come out, round the trees. */
export function Routes() {
  const site = sketch.site.value;
  const share = route.share.value;
  const several = route.sharedRequest.value !== null;
  const ready = several || route.request.value !== null;
  const found = route.result.value?.alternatives.length;
  if (!site) return <p class="loading">{w().tooLarge}</p>;
  return (
    <div class="routes">
      <h1>{w().title}</h1>
      <p>{w().intro}</p>
      {state.opened.value?.site.trees.length === 0 && <p class="known">{w().noTrees}</p>}
      <Places end="from" />
      <Places end="to" />
      {route.ends.from.value.length > 1 && <RainEntry />}
      <PipeChoice />
      {several ? null : <Via />}
      <div class="route-place-row">
        <button
          type="button"
          class="button button-first"
          disabled={!ready || share !== null}
          onClick={() => void planNow()}
        >
          {route.result.value || shared.plan.value ? w().again : w().go}
        </button>
        {share !== null && (
          <button type="button" class="button" onClick={cancelPlan}>
            {w().cancel}
          </button>
        )}
        {share === null && ready && (
          <button type="button" class="button" onClick={forgetRoute}>
            {w().forget}
          </button>
        )}
      </div>
      <p role="status" class="route-share">
        {share !== null && (
          <>
            <progress max={1} value={share} aria-label={w().working(share)} /> {w().working(share)}
          </>
        )}
        {found !== undefined && found > 0 && w().found(found)}
      </p>
      {route.problem.value && <p class="known">{w().failed(route.problem.value)}</p>}
      {several ? <SharedAnswer /> : <Answer />}
    </div>
  );
}
