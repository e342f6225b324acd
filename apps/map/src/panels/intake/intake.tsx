import { useSignal } from '@preact/signals';
import {
  type ColumnMap,
  drainFieldNames,
  type Field,
  treeFieldNames,
  wordEntry,
  wordGuess,
} from '@rootreach/intake';
import { desk } from '../../keep/desk.js';
import { type TakenFile, tables, takeFiles } from '../../take-in/taken-files.js';
import { words } from '../../words/words.js';
import { handOver } from '../../works/hand-over.js';

const w = () => words.value.intake;
const UNITS = ['cm', 'in', 'mm', 'm', 'ft'] as const;
/** Columns of numbers with a unit. */
const MEASURED: readonly string[] = [
  'trunk',
  'girth',
  'canopyDiameter',
  'canopyRadius',
  'height',
  'size',
  'depth',
];

async function readAgain(one: TakenFile, map: ColumnMap): Promise<void> {
  const { taken: before, beside } = tables.value ?? { taken: [], beside: [] };
  const files = [...new Set(before.map(({ file }) => file))];
  // what was changed in the others stays
  const maps = before.map((each) => [each.file.name, { map: each === one ? map : each.map }] as const);
  const { inputs, taken } = await takeFiles(files, new Map(maps));
  await desk().opener.openTables([...beside, ...inputs], { taken, beside });
}

function Columns({ one }: { readonly one: TakenFile }) {
  const map = useSignal<ColumnMap>(one.map);
  const fields = Object.keys(map.value.what === 'tree' ? treeFieldNames : drainFieldNames) as Field[];
  const set = (field: Field, column: string, unit: (typeof UNITS)[number] | undefined) => {
    const { [field]: _, ...rest } = map.value.columns;
    const use = unit === undefined ? { column } : { column, unit };
    map.value = { ...map.value, columns: column === '' ? rest : { ...rest, [field]: use } };
  };
  return (
    <details class="works-part">
      <summary>{w().columns}</summary>
      <div class="intake-fields">
        {fields.map((field) => {
          const use = map.value.columns[field];
          return (
            <div key={field} class="intake-field">
              <label for={`column-${field}`}>{w().fields[field]}</label>
              <select
                id={`column-${field}`}
                class="entry"
                value={use?.column ?? ''}
                onChange={({ currentTarget }) =>
                  set(field, currentTarget.value, MEASURED.includes(field) ? (use?.unit ?? 'cm') : undefined)
                }
              >
                <option value="">{w().none}</option>
                {one.columns.map((column) => (
                  <option key={column} value={column}>
                    {column}
                  </option>
                ))}
              </select>
              {use?.unit && (
                <select
                  class="entry"
                  aria-label={w().unit(w().fields[field])}
                  value={use.unit}
                  onChange={({ currentTarget }) =>
                    set(field, use.column, currentTarget.value as (typeof UNITS)[number])
                  }
                >
                  {UNITS.map((unit) => (
                    <option key={unit} value={unit}>
                      {unit}
                    </option>
                  ))}
                </select>
              )}
            </div>
          );
        })}
      </div>
      <div class="works-buttons">
        <button type="button" class="button button-first" onClick={() => void readAgain(one, map.value)}>
          {w().again}
        </button>
        <button
          type="button"
          class="button"
          onClick={() =>
            handOver('columns.json', `${JSON.stringify(map.value, null, 2)}\n`, 'application/json')
          }
        >
          {w().save}
        </button>
      </div>
    </details>
  );
}

/** How tables were read: columns, units, and what became of every row. */
export function Intake() {
  return (
    <section class="works-section" aria-label={w().title}>
      <h2>{w().title}</h2>
      {(tables.value?.taken ?? []).map((one) => (
        <div key={one.report.file}>
          <p>{w().counts(one.report.file, one.report.rows, one.report.features, one.report.aside)}</p>
          <ul class="quiet">
            {one.report.guesses.map((guess) => (
              <li key={guess.what}>{w().guess?.(guess, one.map) ?? wordGuess(guess)}</li>
            ))}
          </ul>
          {one.report.entries.length > 0 && (
            <details class="works-part">
              <summary>{w().rows}</summary>
              <ul>
                {one.report.entries.map((entry) => (
                  <li key={entry.reason}>{w().entry?.(entry) ?? wordEntry(entry)}</li>
                ))}
              </ul>
            </details>
          )}
          <Columns key={JSON.stringify(one.map)} one={one} />
        </div>
      ))}
    </section>
  );
}
