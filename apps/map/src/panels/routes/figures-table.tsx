import { patternOf } from '../../layers/route-pattern.js';

function Pattern({ index }: { readonly index: number }) {
  return (
    <svg class="route-pattern" viewBox="0 0 44 8" width="44" height="8" aria-hidden="true">
      <path
        d="M1 4H43"
        stroke="currentColor"
        stroke-width="3.5"
        fill="none"
        stroke-dasharray={patternOf(index)}
      />
    </svg>
  );
}

export interface Column<T> {
  readonly key: string;
  readonly name: string;
  readonly isChosen: boolean;
  readonly choose: () => void;
  readonly of: T;
}

export type Row<T> = readonly [name: string, of: (one: T) => string];

/** Ways side by side, each with the pattern that it has on the plan; one of them is chosen by its head. */
export function FiguresTable<T>({
  label,
  columns,
  rows,
}: {
  readonly label: string;
  readonly columns: readonly Column<T>[];
  readonly rows: readonly Row<T>[];
}) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than a phone is scrolled by keys
    <section class="route-table" tabIndex={0} aria-label={label}>
      <table>
        <thead>
          <tr>
            <td />
            {columns.map(({ key, name, isChosen, choose }, index) => (
              <th key={key} scope="col">
                <button type="button" class="route-head" aria-pressed={isChosen} onClick={choose}>
                  {name}
                  <Pattern index={index} />
                </button>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(([name, of]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              {columns.map((column) => (
                <td key={column.key} class={column.isChosen ? 'route-chosen' : ''}>
                  {of(column.of)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
