import * as state from '../state.js';
import { words } from '../words/words.js';

/** Stands beside every result that could lead somebody to dig or cut. */
export function Cautions() {
  const cautions = state.opened.value?.result.cautions ?? [];
  if (cautions.length === 0) return null;
  return (
    <section class="cautions" aria-labelledby="cautions-title">
      <h2 id="cautions-title">{words.value.cautions.title}</h2>
      <ul>
        {cautions.map((caution) => (
          <li key={caution.code}>{words.value.model.caution(caution)}</li>
        ))}
      </ul>
    </section>
  );
}
