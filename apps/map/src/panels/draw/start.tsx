import { useSignal } from '@preact/signals';
import { takeTool } from '../../draw/draw-with.js';
import { pictureOpen, position, wantedView } from '../../draw/drawing-state.js';
import { pictureFrom, viewOf } from '../../draw/lay-picture.js';
import { locate } from '../../draw/locate.js';
import { startBlank } from '../../keep/new-site.js';
import * as state from '../../state.js';
import { words } from '../../words/words.js';
import { PictureInput } from './picture-input.js';

const w = () => words.value.draw;

/** A blank plan at 0, 0 until it is said where it lies. */
const NOWHERE = [0, 0] as const;

async function beginHere(): Promise<string | null> {
  const found = await locate();
  if (!found) return w().position.off;
  position.value = found;
  await startBlank({ info: { begun_at: found.at, located: true } });
  return null;
}

async function beginWith(file: File): Promise<string | null> {
  const underlay = await pictureFrom(file, NOWHERE).catch(() => null);
  if (!underlay) return w().picture.unreadable;
  await startBlank({ info: { underlay } });
  pictureOpen.value = true;
  takeTool('scale');
  wantedView.value = viewOf(underlay);
  return null;
}

/** Ways to begin a new plan. */
export function Start() {
  const said = useSignal<string | null>(null);
  const blank = async (units: 'us' | 'metric') => {
    state.switchedUnits.value = units;
    await startBlank({ units });
    if (!state.wide.value) state.sheetHeight.value = 'low';
    return null;
  };
  const attempt = async (begin: Promise<string | null>) => {
    said.value = await begin.catch(() => w().start.failed);
  };
  return (
    <section class="draw-start" aria-labelledby="draw-start-title">
      <h2 id="draw-start-title">{w().start.title}</h2>
      <p class="quiet">{w().start.text}</p>
      <div class="draw-buttons">
        <button type="button" class="button" onClick={() => void attempt(blank('us'))}>
          {w().start.feet}
        </button>
        <button type="button" class="button" onClick={() => void attempt(blank('metric'))}>
          {w().start.metres}
        </button>
        <button
          type="button"
          class="button"
          onClick={() => {
            said.value = w().position.asking;
            void attempt(beginHere());
          }}
        >
          {w().start.here}
        </button>
        <PictureInput text={w().start.picture} take={(file) => void attempt(beginWith(file))} />
      </div>
      <p class="quiet">{w().start.hereHint}</p>
      <p class="quiet">{w().start.pictureHint}</p>
      <p role="status">{said.value}</p>
    </section>
  );
}
