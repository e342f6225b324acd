import type { Assumption } from '@rootreach/core';
import * as state from '../state.js';
import { words } from '../words/words.js';

/** What was missing and had to be taken as given. */
export function Assumed({ rows }: { readonly rows: readonly Assumption[] }) {
  if (rows.length === 0) return <p class="quiet">{words.value.assumed.none}</p>;
  return (
    <details class="fold">
      <summary>{words.value.assumed.title(rows.length)}</summary>
      <ul>
        {rows.map((row) => (
          <li key={row.path}>{words.value.assumed.row(row, state.units.value)}</li>
        ))}
      </ul>
    </details>
  );
}
