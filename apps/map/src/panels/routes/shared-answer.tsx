import type { SharedLine, SharedWay, SheetStretch } from '@rootreach/core';
import { useEffect, useRef } from 'preact/hooks';
import * as measure from '../../measure.js';
import { adopt } from '../../plan-route/run-route.js';
import * as shared from '../../plan-route/shared-state.js';
import * as state from '../../state.js';
import { words } from '../../words/words.js';
import { Notes, NoWay } from './answer-notes.js';
import { lineName } from './line-names.js';
import { SharedTable } from './shared-table.js';
import { TreesNear, treeName } from './trees-near.js';
import { flow } from './water-units.js';

const w = () => words.value.routes;

/** What the shared main saves against a line for each start. */
function Saving() {
  const found = shared.plan.value?.result;
  if (!found?.route) return null;
  const { shape, cost, separate } = found.route;
  const less = separate.cost.now - cost.now;
  const says = w().shared;
  return (
    <p class="route-saving" role="status">
      {shape === 'separate' && says.noneShared}
      {shape === 'shared' && separate.falls === false && says.onlyShared}
      {shape === 'shared' && separate.falls !== false && says.saves(w().money(less, found.currency))}
    </p>
  );
}

/** Branches by their starts, then what carries their water on. */
function inOrder(way: SharedWay): SharedLine[] {
  const rank = (line: SharedLine): string => `${shared.isMain(line, way) ? 1 : 0} ${lineName(line, way)}`;
  return [...way.lines].sort((a, b) => rank(a).localeCompare(rank(b)));
}

function Line({ line, way }: { readonly line: SharedLine; readonly way: SharedWay }) {
  const units = state.units.value;
  const { lengthM, sizeM, sized, pipe } = line;
  const size = units === 'us' ? measure.girth(sizeM, 'us') : `${Math.round(sizeM * 1000)}\u00a0mm`;
  const says = w().shared;
  return (
    <li>
      <b>{lineName(line, way)}</b>
      <span>
        {says.pipe(measure.length(lengthM, units), size)}
        {sized && `, ${says.carries(flow(sized.flowM3s, units))}`}
      </span>
      {pipe && (
        <span>
          {says.laid(
            measure.depth(pipe.depthM.min, units),
            measure.depth(pipe.depthM.max, units),
            pipe.fall.min,
          )}
        </span>
      )}
      {sized && sized.sideBySide > 1 && (
        <span class="known">
          {says.tooMuch(sized.sideBySide, flow(sized.carriesM3s, units), measure.girth(sized.boreM, units))}
        </span>
      )}
    </li>
  );
}

/** Stretches that are dug otherwise for the sake of trees, line by line. */
function ForTheCrew({ way }: { readonly way: SharedWay }) {
  const units = state.units.value;
  const sheet = shared.plan.value?.sheets[way.shape];
  if (!sheet || sheet.stretches.length === 0) return null;
  const nameOf = ({ line: id }: SheetStretch): string => {
    const line = way.lines.find((one) => one.id === id);
    return line ? lineName(line, way) : '';
  };
  return (
    <details>
      <summary>{w().shared.crew}</summary>
      <ul class="route-trees">
        {sheet.stretches.map((stretch) => (
          <li key={`${stretch.line} ${stretch.fromM}`}>
            <span>
              {nameOf(stretch)}, {measure.span(stretch.fromM, stretch.toM, units)}:{' '}
              {stretch.trees.map(treeName).join(', ')}
            </span>
            <b>{w().shared.ways[stretch.way]}</b>
          </li>
        ))}
      </ul>
      <p>{w().shared.askBefore(measure.girth(sheet.askBeforeCuttingM, units))}</p>
    </details>
  );
}

/** Lines for several starts: shared and apart, side by side, and all about the one that is chosen. */
export function SharedAnswer() {
  const result = shared.plan.value?.result;
  const way = shared.way.value;
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => place.current?.scrollIntoView({ block: 'start' }), [result]);
  if (!result) return null;
  const cannot = way?.falls === false || way?.trees.some(({ rule }) => rule === 'no-dig');
  return (
    <div class="route-answer" ref={place}>
      {result.none && <NoWay none={result.none} />}
      {way && (
        <>
          <h2>{w().ways}</h2>
          <Saving />
          <SharedTable currency={result.currency} />
          <ul class="route-lines">
            {inOrder(way).map((line) => (
              <Line key={line.id} line={line} way={way} />
            ))}
          </ul>
          {way.lines.every(({ sized }) => sized === null) && <p class="quiet">{w().shared.unsized}</p>}
          <TreesNear trees={way.trees} />
          <ForTheCrew way={way} />
          {cannot && (
            <p class="known" role="status">
              {way.falls === false ? w().shared.cannotFall : w().shared.tooHard}
            </p>
          )}
          <button type="button" class="button button-first" disabled={cannot} onClick={() => void adopt()}>
            {w().adopt}
          </button>
        </>
      )}
      <Notes result={result} />
    </div>
  );
}
