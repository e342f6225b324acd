import type { FittingType } from '@rootreach/core';
import { cancelDraft, finishDraft, layDown, pointAt, takeBack } from '../../draw/draw-with.js';
import { aim, aiming, draft, elevation, fittingType, squared, tool } from '../../draw/drawing-state.js';
import { type DrawTool, fewest, isDrawTool, tools } from '../../draw/tools.js';
import { parseNumber } from '../../enter/parse-number.js';
import { marks } from '../../layers/marks.js';
import * as measure from '../../measure.js';
import * as state from '../../state.js';
import { words } from '../../words/words.js';
import { ToolIcon } from './tool-icon.js';

const w = () => words.value.draw;

function FittingChoice() {
  return (
    <select
      class="site-picker tool-choice"
      aria-label={w().fittingType}
      value={fittingType.value}
      onChange={(event) => {
        fittingType.value = event.currentTarget.value as FittingType;
      }}
    >
      {(Object.keys(marks) as FittingType[]).map((type) => (
        <option key={type} value={type}>
          {words.value.fitting[type]}
        </option>
      ))}
    </select>
  );
}

function ElevationChoice() {
  return (
    <label class="tool-number">
      <span>{w().elevation(measure.lengthUnit(state.units.value))}</span>
      <input
        class="draw-input"
        type="text"
        inputMode="decimal"
        autoComplete="off"
        defaultValue={String(elevation.value)}
        onInput={(event) => {
          const typed = parseNumber(event.currentTarget.value);
          if (typed !== null) elevation.value = typed;
        }}
      />
    </label>
  );
}

function SquareChoice() {
  return (
    <label class="tool-check">
      <input
        type="checkbox"
        checked={squared.value}
        onChange={(event) => {
          squared.value = event.currentTarget.checked;
        }}
      />
      <span>{w().squared}</span>
    </label>
  );
}

function Choices({ of }: { readonly of: DrawTool }) {
  if (of === 'fitting') return <FittingChoice />;
  if (of === 'level') return <ElevationChoice />;
  return tools[of].shape === 'area' && !draft.value ? <SquareChoice /> : null;
}

function DraftActions({ of }: { readonly of: DrawTool }) {
  const places = draft.value?.places.length ?? 0;
  return (
    <>
      <button type="button" class="button" title={w().actions.backHint} onClick={takeBack}>
        {w().actions.back}
      </button>
      <button
        type="button"
        class="button button-first"
        disabled={places < fewest[tools[of].shape]}
        onClick={finishDraft}
      >
        {w().actions.finish}
      </button>
      <button type="button" class="button" onClick={cancelDraft}>
        {w().actions.cancel}
      </button>
    </>
  );
}

/** What can be done with the tool in hand. */
export function ToolActions() {
  const now = tool.value;
  return (
    <div class="tool-actions">
      {isDrawTool(now) && !draft.value && (state.wide.value || !aiming.value) && (
        <span class="tool-name">
          <ToolIcon tool={now} />
          {w().tools[now]}
        </span>
      )}
      {isDrawTool(now) && <Choices of={now} />}
      <button
        type="button"
        class="button"
        aria-pressed={aiming.value}
        title={w().actions.aimHint}
        onClick={() => {
          aiming.value = !aiming.value;
        }}
      >
        {w().actions.aim}
      </button>
      {aiming.value && (
        <button type="button" class="button button-first" onClick={() => aim.value && pointAt(aim.value)}>
          {w().actions.put}
        </button>
      )}
      {isDrawTool(now) && draft.value ? (
        <DraftActions of={now} />
      ) : (
        <button type="button" class="button" onClick={layDown}>
          {w().actions.done}
        </button>
      )}
    </div>
  );
}
