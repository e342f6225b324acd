import { useSignal } from '@preact/signals';
import { isTileAddress, keepTileAddress, tileAddress } from '../../draw/tile-address.js';
import { desk } from '../../keep/desk.js';
import { words } from '../../words/words.js';

const w = () => words.value.draw.tiles;

/** The rule for pictures is set when the page loads: what it allows changes only by loading it anew. */
async function loadAnew(): Promise<void> {
  await desk().keeper.flush();
  location.reload();
}

interface FieldProps {
  readonly label: string;
  readonly value: string;
  readonly set: (value: string) => void;
}

function Field({ label, value, set }: FieldProps) {
  return (
    <label>
      <span>{label}</span>
      <input
        class="draw-input"
        type="text"
        autoComplete="off"
        spellcheck={false}
        value={value}
        onInput={(event) => set(event.currentTarget.value)}
      />
    </label>
  );
}

/** An address of map tiles that the user gives: without one nothing is asked of any server. */
export function TilesPart() {
  const now = tileAddress();
  const address = useSignal(now?.address ?? '');
  const attribution = useSignal(now?.attribution ?? '');
  const said = useSignal<string | null>(null);
  const use = () => {
    const given = { address: address.value.trim(), attribution: attribution.value.trim() };
    if (!isTileAddress(given.address)) said.value = w().wrong;
    else if (given.attribution === '') said.value = w().unnamed;
    else if (keepTileAddress(given)) void loadAnew();
    else said.value = w().unkept;
  };
  const stop = () => {
    keepTileAddress(null);
    void loadAnew();
  };
  return (
    <details class="fold">
      <summary>{w().title}</summary>
      <form
        class="draw-part"
        onSubmit={(event) => {
          event.preventDefault();
          use();
        }}
      >
        <p class="quiet">{w().text}</p>
        <Field label={w().address} value={address.value} set={(value) => (address.value = value)} />
        <Field
          label={w().attribution}
          value={attribution.value}
          set={(value) => (attribution.value = value)}
        />
        <div class="draw-buttons">
          <button type="submit" class="button">
            {w().use}
          </button>
          {now && (
            <button type="button" class="button" onClick={stop}>
              {w().stop}
            </button>
          )}
        </div>
        <p role="status">{said.value}</p>
      </form>
    </details>
  );
}
