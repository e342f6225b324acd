import { gridStep } from '../layers/grid.js';
import { lengthUnit, roundStep, unitM } from '../measure.js';
import * as state from '../state.js';
import { words } from '../words/words.js';

/** The scale bar is at least this long. */
const LEAST_PIXELS = 70;
const PARTS = 4;

function ScaleBar() {
  const units = state.units.value;
  const perPixel = state.metresPerPixel.value;
  if (perPixel === 0) return null;
  const steps = roundStep((LEAST_PIXELS * perPixel) / unitM(units));
  const width = (steps * unitM(units)) / perPixel;
  const part = width / PARTS;
  return (
    <svg
      class="scale-bar"
      width={width + 34}
      height="30"
      role="img"
      aria-label={`${steps} ${lengthUnit(units)}`}
    >
      {Array.from({ length: PARTS }, (_, i) => (
        <rect
          key={i}
          class={i % 2 === 0 ? 'scale-dark' : 'scale-light'}
          x={4 + i * part}
          y="20"
          width={part}
          height="6"
        />
      ))}
      <text x="4" y="14" text-anchor="start">
        0
      </text>
      <text x={4 + width} y="14" text-anchor="middle">
        {steps} {lengthUnit(units)}
      </text>
    </svg>
  );
}

/** As in the corner of a drawing: what it shows, its scale, its north. */
export function TitleBlock() {
  const opened = state.opened.value;
  if (!opened) return null;
  // on a phone the drawing tools need the room
  const isCramped = !state.wide.value && state.sheetPlace.value === 'draw';
  const { site } = opened.result;
  const step = gridStep(state.metresPerPixel.value, state.units.value);
  return (
    <>
      {site.invented && <p class="stamp">{words.value.invented}</p>}
      <div class="title-block" hidden={isCramped} style={{ bottom: `${state.coveredBottom.value + 10}px` }}>
        <svg
          class="north"
          viewBox="0 0 20 40"
          width="20"
          height="40"
          role="img"
          aria-label={words.value.plan.north}
        >
          <path d="M10 2L15 16H10Z" class="scale-dark" />
          <path d="M10 2L5 16H10Z" class="scale-light" />
          <path d="M10 16V24" class="north-stem" />
          <text x="10" y="39" text-anchor="middle">
            N
          </text>
        </svg>
        <div>
          <ScaleBar />
          <p class="quiet">{words.value.plan.grid(`${step} ${lengthUnit(state.units.value)}`)}</p>
        </div>
      </div>
    </>
  );
}
