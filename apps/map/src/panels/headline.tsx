import * as state from '../state.js';
import { words } from '../words/words.js';

const w = () => words.value.headline;

function mainWords(): string {
  const totals = state.opened.value?.result.totals;
  if (!totals || totals.segments === 0) return w().none;
  const { act, inspect, watch } = totals.byBand;
  if (act.segments > 0) return w().act(act.segments);
  if (inspect.segments > 0) return w().inspect(inspect.segments);
  if (watch.segments > 0) return w().watch(watch.segments);
  return w().leave;
}

/** What to do first, before any number. */
export function Headline() {
  const opened = state.opened.value;
  if (!opened) return null;
  const { totals, segments, site } = opened.result;
  const units = state.units.value;
  const worst = segments[0];
  const unsaid = totals.byBand['cannot-say'].segments;
  return (
    <div class="headline">
      {site.name && <p class="quiet">{site.name}</p>}
      <h1>{mainWords()}</h1>
      {worst && worst.band !== 'leave' && <p>{w().start(words.value.list.row(worst, units))}</p>}
      {unsaid > 0 && <p>{w().cannotSay(unsaid)}</p>}
      <p class="quiet">{w().extent(totals, units)}</p>
    </div>
  );
}
