import { takeTool } from '../../draw/draw-with.js';
import { aiming, tool } from '../../draw/drawing-state.js';
import { drawTools, type Tool } from '../../draw/tools.js';
import { words } from '../../words/words.js';
import { ToolIcon } from './tool-icon.js';

const w = () => words.value.draw;

/** Taken by a key: then the plan gets the focus and the cross, so that arrow keys go on from there. */
function take(wanted: Exclude<Tool, 'scale'>, byKey: boolean): void {
  takeTool(wanted);
  if (!byKey || wanted === 'pick') return;
  aiming.value = true;
  document.querySelector<HTMLElement>('.plan-sheet')?.focus();
}

/** All tools in a row; it can be pushed sideways where there is no room. */
export function ToolStrip() {
  const all: readonly Exclude<Tool, 'scale'>[] = ['pick', ...drawTools];
  return (
    <div class="tool-strip">
      {all.map((one) => (
        <button
          key={one}
          type="button"
          class="tool"
          aria-pressed={tool.value === one}
          onClick={(event) => take(one, event.detail === 0)}
        >
          <ToolIcon tool={one} />
          <span>{one === 'pick' ? w().pick : w().tools[one]}</span>
        </button>
      ))}
    </div>
  );
}
