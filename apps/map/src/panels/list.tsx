import { useSignal } from '@preact/signals';
import type { Band, SegmentResult, Units } from '@rootreach/core';
import { length } from '../measure.js';
import * as state from '../state.js';
import { words } from '../words/words.js';
import { BandWord } from './swatch.js';

const AT_ONCE = 40;
const BANDS: readonly Band[] = ['act', 'inspect', 'watch', 'leave', 'cannot-say'];

const oddsOf = (segment: SegmentResult): string =>
  segment.band === 'cannot-say' ? words.value.list.noOdds : words.value.model.chance(segment.chance);

function whyOf(segment: SegmentResult, units: Units): string {
  const tree = segment.trees[0];
  if (!tree) return words.value.list.noTree;
  return words.value.list.ways(
    words.value.list.tree(words.value.model.tree(tree.name), tree.distanceM, units),
    words.value.model.reason(segment),
  );
}

function Row({ segment }: { readonly segment: SegmentResult }) {
  const units = state.units.value;
  return (
    <li>
      <button
        type="button"
        class="row"
        data-stretch={segment.id}
        onClick={() => state.chooseStretch(segment.id)}
        onPointerEnter={() => {
          state.hintedStretch.value = segment.id;
        }}
        onPointerLeave={() => {
          state.hintedStretch.value = null;
        }}
      >
        <span class={`rank rank-${segment.band}`}>{segment.rank}</span>
        <span class="row-text">
          <BandWord band={segment.band} />
          <span class="row-where">{words.value.list.row(segment, units)}</span>
          {segment.known && (
            <span class="row-odds">
              {words.value.card.known(words.value.seen[segment.known.seen], segment.known.year)}
            </span>
          )}
          {!segment.known && <span class="row-odds">{oddsOf(segment)}</span>}
          <span class="row-tree">{whyOf(segment, units)}</span>
        </span>
        <span class="row-go" aria-hidden="true">
          ›
        </span>
      </button>
    </li>
  );
}

/** How much of the lines falls to each band, as one bar. */
function LengthBar() {
  const totals = state.opened.value?.result.totals;
  if (!totals || totals.lengthM === 0) return null;
  const present = BANDS.filter((band) => totals.byBand[band].segments > 0);
  return (
    <div class="length-bar">
      <div class="length-bar-parts" aria-hidden="true">
        {present.map((band) => (
          <i key={band} class={`fill-${band}`} style={{ flexGrow: totals.byBand[band].lengthM }} />
        ))}
      </div>
      <ul aria-label={words.value.list.bar}>
        {present.map((band) => (
          <li key={band}>
            <BandWord band={band} /> {length(totals.byBand[band].lengthM, state.units.value)}
          </li>
        ))}
      </ul>
    </div>
  );
}

/** All stretches, worst first. */
export function List() {
  const shown = useSignal(AT_ONCE);
  const segments = state.segments.value;
  const more = segments.length - shown.value;
  return (
    <section class="list" aria-labelledby="list-title">
      <LengthBar />
      <h2 id="list-title">{words.value.list.title}</h2>
      <ol>
        {segments.slice(0, shown.value).map((segment) => (
          <Row key={segment.id} segment={segment} />
        ))}
      </ol>
      {more > 0 && (
        <button
          type="button"
          class="button"
          onClick={() => {
            shown.value += AT_ONCE;
          }}
        >
          {words.value.list.more(Math.min(AT_ONCE, more))}
        </button>
      )}
      {state.isLarge.value && <p class="quiet">{words.value.list.onlyWorst(segments.length)}</p>}
    </section>
  );
}
