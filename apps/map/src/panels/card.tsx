import type { SegmentResult } from '@rootreach/core';
import * as sketch from '../sketch/sketch.js';
import * as state from '../state.js';
import { words } from '../words/words.js';
import { yearShown } from './answers/ahead.js';
import { Drivers } from './answers/drivers.js';
import { fillIn } from './answers/fill-in.js';
import { LookAhead, WhatIfNotice } from './answers/look-ahead.js';
import { Assumed } from './assumed.js';
import { Cautions } from './cautions.js';
import { ChanceBar } from './chance-bar.js';
import { addFinding } from './forms/add-finding.js';
import { Later } from './later.js';
import { Profile } from './profile.js';
import { BandWord } from './swatch.js';

const w = () => words.value.card;

const loadMissing = async () => (await import('./answers/missing.js')).Missing;
const loadFacts = async () => (await import('./facts.js')).Facts;

function Odds({ segment }: { readonly segment: SegmentResult }) {
  const years = state.opened.value?.result.horizonYears ?? 10;
  const within = words.value.answers.time.within(years, yearShown.value);
  const { likely, range } = w().within(words.value.model.chance(segment.chance), within);
  return (
    <section class="odds" aria-labelledby="odds-title">
      <h2 id="odds-title">{segment.known ? w().knownChanceTitle : w().chanceTitle}</h2>
      <p class="odds-likely">{likely}</p>
      <p class="odds-range">{range}</p>
      <ChanceBar chance={segment.chance} band={segment.band} />
      <p class="quiet">
        {w().score(segment.score)}. {w().worstTenth(segment.inWorstTenth)}
      </p>
    </section>
  );
}

function Trees({ segment }: { readonly segment: SegmentResult }) {
  const units = state.units.value;
  return (
    <section aria-labelledby="trees-title">
      <h2 id="trees-title">{w().treesTitle}</h2>
      {segment.trees.length === 0 && <p>{words.value.list.noTree}.</p>}
      <ul class="plain">
        {segment.trees.map((tree) => (
          <li key={tree.id}>
            <button type="button" class="line-button" onClick={() => state.chooseTree(tree.id)}>
              <span>{words.value.list.tree(words.value.model.tree(tree.name), tree.distanceM, units)}</span>
              <span class="number">{w().treeShare(tree.share)}</span>
              <i class="share" style={{ width: `${tree.share * 100}%` }} />
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Steps() {
  const line = state.line.value;
  const id = state.chosenStretch.value;
  const at = line?.segments.indexOf(id ?? '') ?? -1;
  const last = (line?.segments.length ?? 0) - 1;
  return (
    <div class="steps">
      <button type="button" class="button" disabled={at <= 0} onClick={() => state.stepAlong(-1)}>
        ← {w().down}
      </button>
      <button type="button" class="button" disabled={at < 0 || at >= last} onClick={() => state.stepAlong(1)}>
        {w().up} →
      </button>
    </div>
  );
}

/** From the answer back to what was entered. */
function Edit({ segment }: { readonly segment: SegmentResult }) {
  if (!sketch.site.value) return null;
  const from = segment.reach.from.endsWith(' end') ? null : segment.reach.from;
  return (
    <div class="steps">
      <button type="button" class="button" onClick={() => addFinding(segment.drainId, from)}>
        {words.value.forms.drain.addFinding}
      </button>
      <button type="button" class="button" onClick={() => fillIn({ of: 'line', id: segment.drainId })}>
        {words.value.forms.edit.line}
      </button>
    </div>
  );
}

/** One stretch: what to do, then the number, then the reasons. */
export function Card({ segment }: { readonly segment: SegmentResult }) {
  const units = state.units.value;
  const { known } = segment;
  return (
    <article class="card" aria-label={words.value.list.row(segment, units)}>
      <button type="button" class="back" onClick={() => state.chooseStretch(null)}>
        ‹ {w().back}
      </button>
      <div class="card-head">
        <span class={`rank rank-${segment.band}`}>{segment.rank}</span>
        <h1 class="capital card-where">{w().where(segment, units)}</h1>
        <p class="card-station">{w().station(segment, units)}</p>
      </div>
      <p class="todo">
        <BandWord band={segment.band} /> {w().todo(words.value.model.advice(segment))}
      </p>
      {known && <p class="known">{w().known(words.value.seen[known.seen], known.year)}</p>}
      <p>{w().reach(segment, units)}</p>
      <WhatIfNotice />
      {segment.band === 'cannot-say' ? (
        <Later load={loadMissing} props={{ segment }} />
      ) : (
        <Odds segment={segment} />
      )}
      {state.line.value && <Profile line={state.line.value} chosen={segment} />}
      <Steps />
      <LookAhead />
      <Trees segment={segment} />
      <Drivers segment={segment} />
      {segment.band !== 'cannot-say' && <Later load={loadMissing} props={{ segment }} />}
      <Edit segment={segment} />
      <Later load={loadFacts} props={{ segment }} />
      <Assumed rows={segment.assumed} />
      <Cautions />
    </article>
  );
}
