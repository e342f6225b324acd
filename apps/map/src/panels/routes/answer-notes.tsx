import {
  type Caution,
  type FallRemedy,
  type NoRoute,
  type NoSharedRoute,
  wordCaution,
} from '@rootreach/core';
import * as state from '../../state.js';
import { language, words } from '../../words/words.js';

const w = () => words.value.routes;

/** Why there is no way, and what would help. */
export function NoWay({ none }: { readonly none: NoRoute | NoSharedRoute }) {
  const units = state.units.value;
  const remedies: readonly FallRemedy[] = none.reason === 'no-fall' ? none.remedies : [];
  return (
    <div role="status">
      <p class="known">{w().none(none, units)}</p>
      {remedies.length > 0 && (
        <>
          <p>{w().remedies}</p>
          <ul class="route-remedies">
            {remedies.map((one) => (
              <li key={one.kind}>{w().remedy(one, units)}</li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}

/** What stands beside every answer. */
export function Notes({
  result,
}: {
  readonly result: { readonly pricesInvented: boolean; readonly cautions: readonly Caution[] };
}) {
  return (
    <>
      {result.pricesInvented && <p class="quiet">{w().invented}</p>}
      <details>
        <summary>{words.value.cautions.title}</summary>
        <ul>
          {result.cautions.map(({ code }) => (
            <li key={code}>{wordCaution(code, language.value)}</li>
          ))}
        </ul>
      </details>
    </>
  );
}
