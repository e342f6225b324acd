import { useEffect } from 'preact/hooks';
import { aiming, draft, note, scalePlaces, snapped, tool } from '../../draw/drawing-state.js';
import { isDrawTool, tools } from '../../draw/tools.js';
import * as sketch from '../../sketch/sketch.js';
import * as state from '../../state.js';
import { words } from '../../words/words.js';
import { DrawnLength } from './drawn-length.js';
import { ToolActions } from './tool-actions.js';
import { ToolStrip } from './tool-strip.js';

const w = () => words.value.draw;

/** One sentence on what the next tap does. */
function hint(): string {
  const { hint: say } = w();
  const now = tool.value;
  if (now === 'pick') return say.pick;
  if (now === 'scale') {
    const given = scalePlaces.value.length;
    return given === 2 ? say.scaleDone : given === 1 ? say.scaleSecond : say.scaleFirst;
  }
  const { shape } = tools[now];
  if (shape === 'point') return now === 'fitting' || now === 'level' ? say.point[now] : say.point.tree;
  if (draft.value) return shape === 'area' ? say.closing : say.next;
  if (shape === 'area') return say.first.area;
  return now === 'drain' ? say.first.drain : say.first.line;
}

/** What the next tap does, or what the last one did with an undo beside it. */
function Said() {
  const onto = snapped.value?.onto;
  return (
    <div class="draw-said">
      <div role="status">
        {note.value === null ? (
          <p>{hint()}</p>
        ) : (
          <p class="draw-note">
            <span>{note.value}</span>
          </p>
        )}
      </div>
      {note.value !== null && (
        <button
          type="button"
          class="button"
          onClick={() => {
            sketch.undo();
            note.value = null;
          }}
        >
          {w().actions.undo}
        </button>
      )}
      {draft.value && <DrawnLength />}
      {isDrawTool(tool.value) && onto && <p class="draw-onto">{w().onto[onto]}</p>}
    </div>
  );
}

function Cross() {
  const top = `calc((100% - ${state.coveredBottom.value}px) / 2)`;
  return (
    <svg
      class="cross"
      viewBox="0 0 64 64"
      width="64"
      height="64"
      style={{ top }}
      role="img"
      aria-label={w().cross}
    >
      <path class="cross-back" d="M32 4v22M32 38v22M4 32h22M38 32h22" />
      <path class="cross-line" d="M32 4v22M32 38v22M4 32h22M38 32h22" />
      <circle class="cross-dot" cx="32" cy="32" r="2" />
    </svg>
  );
}

/** The drawing tools on the plan: above the sheet on a phone, where a thumb reaches. */
export function DrawBar() {
  useEffect(() => {
    state.keyOpen.value = false;
  }, []);
  if (!sketch.site.value) return null;
  const bottom = `${state.coveredBySheet.value + 8}px`;
  return (
    <>
      {aiming.value && <Cross />}
      <Said />
      <div class="draw-bar" role="toolbar" aria-label={w().bar} style={{ bottom }}>
        {tool.value === 'pick' ? <ToolStrip /> : <ToolActions />}
      </div>
    </>
  );
}
