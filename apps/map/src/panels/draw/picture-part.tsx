import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { takeTool } from '../../draw/draw-with.js';
import {
  pictureOpen,
  planMiddle,
  scalePlaces,
  tool,
  underlay,
  wantedView,
} from '../../draw/drawing-state.js';
import { pictureFrom, viewOf } from '../../draw/lay-picture.js';
import { scaledByTwo, type Underlay } from '../../draw/picture.js';
import { parseLength } from '../../enter/parse-length.js';
import * as measure from '../../measure.js';
import { setInfo } from '../../sketch/changes.js';
import * as sketch from '../../sketch/sketch.js';
import * as state from '../../state.js';
import { words } from '../../words/words.js';
import { PictureInput } from './picture-input.js';
import { PictureSlider } from './picture-slider.js';

const w = () => words.value.draw.picture;

const set = (label: string, next: Underlay | undefined) => sketch.edit(label, setInfo({ underlay: next }));

/** Asks how far apart the two tapped places are, and scales the picture by it. */
function Scale({ shown }: { readonly shown: Underlay }) {
  const typed = useSignal('');
  const [a, b] = scalePlaces.value;
  const unit = measure.lengthUnit(state.units.value);
  const known = parseLength(typed.value, unit === 'ft' ? 'ft' : 'm');
  const next = a && b && known ? scaledByTwo(shown, a, b, known.lengthM) : null;
  if (!a || !b) {
    return (
      <button
        type="button"
        class="button"
        aria-pressed={tool.value === 'scale'}
        onClick={() => takeTool('scale')}
      >
        {w().scale}
      </button>
    );
  }
  return (
    <form
      class="picture-scale"
      onSubmit={(event) => {
        event.preventDefault();
        if (!next) return;
        set(w().scaled, next);
        wantedView.value = viewOf(next);
        takeTool('pick');
      }}
    >
      <label>
        <span>{w().length(unit)}</span>
        <input
          class="draw-input"
          type="text"
          inputMode="decimal"
          autoComplete="off"
          value={typed.value}
          onInput={(event) => {
            typed.value = event.currentTarget.value;
          }}
        />
      </label>
      <button type="submit" class="button" disabled={!next}>
        {w().apply}
      </button>
    </form>
  );
}

function Shown({ shown }: { readonly shown: Underlay }) {
  const wideM = shown.widthPx * shown.metresPerPixel;
  return (
    <>
      <p class="quiet">{w().notScaled}</p>
      <Scale shown={shown} />
      <p>{w().wide(wideM, state.units.value)}</p>
      <PictureSlider
        label={w().opacity}
        step={{ name: w().opacityChanged, low: 0.1, high: 1, by: 0.05 }}
        value={shown.opacity}
        next={(opacity) => ({ ...shown, opacity })}
      />
      <PictureSlider
        label={w().turn}
        step={{ name: w().turnChanged, low: -180, high: 180, by: 0.5 }}
        value={shown.turnDegrees}
        next={(turnDegrees) => ({ ...shown, turnDegrees })}
      />
      <p class="quiet">{w().moveHint}</p>
      <button type="button" class="button" onClick={() => set(w().removed, undefined)}>
        {w().remove}
      </button>
    </>
  );
}

/** A picture under the plan: lay it, scale it, turn it, move it, take it away. */
export function PicturePart() {
  const said = useSignal<string | null>(null);
  const shown = underlay.value;
  useEffect(
    () => () => {
      pictureOpen.value = false;
    },
    [],
  );
  const lay = async (file: File) => {
    const laid = await pictureFrom(file, planMiddle.value).catch(() => null);
    said.value = laid ? null : w().unreadable;
    if (!laid) return;
    set(w().laid, laid);
    takeTool('scale');
    wantedView.value = viewOf(laid);
  };
  return (
    <details
      class="fold"
      open={pictureOpen.value}
      onToggle={(event) => {
        pictureOpen.value = event.currentTarget.open;
      }}
    >
      <summary>{w().title}</summary>
      <div class="draw-part">
        {shown ? <Shown shown={shown} /> : <PictureInput text={w().lay} take={(file) => void lay(file)} />}
        <p role="status">{said.value}</p>
      </div>
    </details>
  );
}
