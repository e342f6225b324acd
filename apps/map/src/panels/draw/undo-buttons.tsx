import * as sketch from '../../sketch/sketch.js';
import { words } from '../../words/words.js';

const w = () => words.value.keep;

function Arrow({ mirrored }: { readonly mirrored: boolean }) {
  return (
    <svg viewBox="0 0 24 24" width="24" height="24" aria-hidden="true" class={mirrored ? 'mirrored' : ''}>
      <path class="arrow" d="M9 5L4 10L9 15M4.5 10H14a5 5 0 0 1 0 10h-3" />
    </svg>
  );
}

/** Takes back the last change of the sketch, or makes it again. */
export function UndoButtons() {
  if (!sketch.site.value) return null;
  const undo = w().undo(sketch.lastLabel.value);
  const redo = w().redo(sketch.nextLabel.value);
  return (
    <fieldset class="undo-buttons">
      <legend class="unseen">{w().history}</legend>
      <button
        type="button"
        class="tool-button"
        aria-label={undo}
        title={undo}
        disabled={!sketch.canUndo.value}
        onClick={() => sketch.undo()}
      >
        <Arrow mirrored={false} />
      </button>
      <button
        type="button"
        class="tool-button"
        aria-label={redo}
        title={redo}
        disabled={!sketch.canRedo.value}
        onClick={() => sketch.redo()}
      >
        <Arrow mirrored={true} />
      </button>
    </fieldset>
  );
}
