import { useEffect, useRef } from 'preact/hooks';
import { tileAddress } from '../draw/tile-address.js';
import { drawPlan, type PlanControls } from '../layers/draw-plan.js';
import * as state from '../state.js';
import { words } from '../words/words.js';
import { Key } from './key.js';
import { Later } from './later.js';
import { TitleBlock } from './title-block.js';

const w = () => words.value.plan;
const ZOOM_STEP = 0.75;

const loadBar = async () => (await import('./draw/draw-bar.js')).DrawBar;

/** Who made the map tiles that the user asked for. */
function TileCredit() {
  const tiles = tileAddress();
  const bottom = `${state.coveredBottom.value + 2}px`;
  return (
    tiles && (
      <p class="tile-credit" style={{ bottom }}>
        {tiles.attribution}
      </p>
    )
  );
}

/** The drawing and what lies on its edge: zoom, key, title block. */
export function PlanView() {
  const place = useRef<HTMLDivElement>(null);
  const controls = useRef<PlanControls | null>(null);
  useEffect(() => {
    if (!place.current) return;
    controls.current = drawPlan(place.current);
    return () => controls.current?.stop();
  }, []);
  return (
    <main class="plan">
      <div class="plan-sheet" ref={place} />
      <div class="plan-buttons">
        <button
          type="button"
          aria-label={w().closer}
          title={w().closer}
          onClick={() => controls.current?.zoomBy(ZOOM_STEP)}
        >
          +
        </button>
        <button
          type="button"
          aria-label={w().further}
          title={w().further}
          onClick={() => controls.current?.zoomBy(-ZOOM_STEP)}
        >
          −
        </button>
        <button
          type="button"
          aria-label={w().whole}
          title={w().whole}
          onClick={() => controls.current?.showWhole()}
        >
          <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
            <path
              d="M3 8V3h5M12 3h5v5M17 12v5h-5M8 17H3v-5"
              fill="none"
              stroke="currentColor"
              stroke-width="1.8"
            />
          </svg>
        </button>
      </div>
      <Key />
      <TitleBlock />
      <TileCredit />
      {state.sheetPlace.value === 'draw' && <Later load={loadBar} />}
    </main>
  );
}
