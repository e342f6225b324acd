import type { Choice, DecideResult } from '@rootreach/core';
import { wordsFor } from '@rootreach/report';
import { language, words } from '../../words/words.js';
import * as works from '../../works/works-state.js';

const w = () => words.value.works;

/** What the other outputs call a choice, in the language that is on. */
export const choiceWords = () => wordsFor(language.value).owner.choices;

/** One choice: what is done, what it costs, what it leaves of the trouble. */
export function ChoiceCard({ choice, decided }: { readonly choice: Choice; readonly decided: DecideResult }) {
  const said = choiceWords();
  const { id, now, presentValue, chance, recurring, tree, garden, work } = choice;
  const givesAccess = work?.fittings.some(({ type, replaces }) => type === 'basin' && replaces !== null);
  const tag = id === decided.recommended ? said.advised : id === decided.runnerUp ? said.second : null;
  const isPicked = (works.picked.value ?? decided.recommended) === id;
  return (
    <li class={isPicked ? 'choice choice-picked' : 'choice'}>
      <h3>
        {said.names[id]} {tag && <span class="choice-tag">{tag}</span>}
      </h3>
      <p>{said.done[id]}</p>
      {givesAccess && id !== 'basin-for-wye' && <p>{w().basin}</p>}
      <p>
        {now === null ? w().unpriced : w().now(now, decided.currency)}
        {presentValue !== null && `. ${w().over(presentValue, decided.horizonYears, decided.currency)}`}
      </p>
      {chance && (
        <p>
          {w().chance(10, chance['10'])}
          <br />
          {w().chance(25, chance['25'])}
        </p>
      )}
      {recurring.length > 0 && (
        <p class="quiet">
          {recurring.map((one) => w().recurring[one.what](w().years(one.everyYears))).join(', ')}
        </p>
      )}
      <p class="quiet capital">
        {said.trees[tree.effect]}, {said.gardens[garden]}
      </p>
      <button
        type="button"
        class="button"
        aria-pressed={isPicked}
        aria-label={`${isPicked ? w().picked : w().pick}: ${said.names[id]}`}
        onClick={() => {
          works.picked.value = id;
        }}
      >
        {isPicked ? w().picked : w().pick}
      </button>
    </li>
  );
}
