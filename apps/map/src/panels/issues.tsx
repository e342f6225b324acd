import * as state from '../state.js';
import { words } from '../words/words.js';

const AT_MOST = 50;

/** What was found in the files while reading them. */
export function Issues() {
  const all = state.issues.value;
  if (all.length === 0) return null;
  const more = all.length - AT_MOST;
  return (
    <details class="fold" open={state.filesHaveErrors.value}>
      <summary>{words.value.issues.title(all.length)}</summary>
      <ul>
        {all.slice(0, AT_MOST).map((issue, index) => (
          <li key={index}>
            <b>{words.value.issues.severity[issue.severity]}.</b>{' '}
            {words.value.issues.row(issue, words.value.model.issue(issue, state.units.value))}
          </li>
        ))}
        {more > 0 && <li>{words.value.issues.more(more)}</li>}
      </ul>
    </details>
  );
}

/** Why the last file was not opened. */
export function Problem() {
  const why = state.problem.value;
  return (
    <div role="alert" class="problem-place">
      {why !== null && (
        <div class="problem">
          <p>
            {why} {state.opened.value && words.value.problem.stays}
          </p>
          <button
            type="button"
            class="button"
            onClick={() => {
              state.problem.value = null;
            }}
          >
            {words.value.problem.close}
          </button>
        </div>
      )}
    </div>
  );
}
