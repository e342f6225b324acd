import { quantities, toSquareFeet } from '@rootreach/core';
import { parseNumber } from '../../enter/parse-number.js';
import { aboutName, without } from '../../enter/quantity.js';
import { takeAbout } from '../../enter/take-about.js';
import * as state from '../../state.js';
import { words } from '../../words/words.js';
import type { Target } from './target.js';
import { TypedField } from './typed-field.js';

const AREA = /^(.*?)\s*(m2|m²|sq\.? ?m|ft2|ft²|sq\.? ?ft)?$/i;
const ABOUT = aboutName('serves');

function areaOf(values: Target['values']): number | null {
  for (const { name, toSi } of quantities.serves.names) {
    const value = values[name];
    if (typeof value === 'number') return toSi(value);
  }
  return null;
}

/** Ground and roof that drain into a line. */
export function AreaField({ target }: { readonly target: Target }) {
  const w = words.value.forms;
  const units = state.units.value;
  const areaM2 = areaOf(target.values);
  const read = (typed: string) => {
    const said = takeAbout(typed);
    const [, number = '', unit] = AREA.exec(said.text) ?? [];
    // an area is whole and large: here a comma parts thousands
    const value = parseNumber(number.replace(/(\d),(\d{3})$/, '$1$2'));
    if (value === null || value < 0) return null;
    const metric = unit === undefined ? units === 'metric' : unit.toLowerCase().includes('m');
    const about = said.about || target.values[ABOUT] === true || undefined;
    return { ...without('serves'), [metric ? 'serves_m2' : 'serves_ft2']: value, [ABOUT]: about };
  };
  const shown = (si: number) =>
    units === 'us' ? `${Number(toSquareFeet(si).toFixed(1))} ft2` : `${Number(si.toFixed(1))} m2`;
  return (
    <TypedField
      target={target}
      label={w.drain.serves}
      text={areaM2 === null ? '' : shown(areaM2)}
      read={read}
      empty={without('serves')}
      wrong={w.wrong.area[units]}
      keyboard="decimal"
      about={ABOUT}
    />
  );
}
