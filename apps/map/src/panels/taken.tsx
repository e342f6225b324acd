import * as state from '../state.js';
import { tables } from '../take-in/taken-files.js';
import { words } from '../words/words.js';

/** That tables were made into this site, and where to see how. */
export function Taken() {
  const w = words.value.intake;
  if (tables.value === null) return null;
  return (
    <section class="taken" aria-label={w.title}>
      {tables.value.taken.map(({ report }) => (
        <p key={report.file}>{w.counts(report.file, report.rows, report.features, report.aside)}</p>
      ))}
      <button
        type="button"
        class="button"
        onClick={() => {
          state.sheetPlace.value = 'sites';
        }}
      >
        {w.see}
      </button>
    </section>
  );
}
