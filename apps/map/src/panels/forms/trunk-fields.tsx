import { useSignal } from '@preact/signals';
import { parseLength } from '../../enter/parse-length.js';
import { parseStems } from '../../enter/parse-stems.js';
import { aboutName, readLength, readStems, without, writeLength, writeStems } from '../../enter/quantity.js';
import { bareUnit, showLength } from '../../enter/show-length.js';
import { takeAbout } from '../../enter/take-about.js';
import * as state from '../../state.js';
import { words } from '../../words/words.js';
import { RadioRow } from './radio-row.js';
import type { Target, Values } from './target.js';
import { TypedField } from './typed-field.js';

type Way = 'girth' | 'dbh' | 'stems';

const LEAST_M = 0.001;
const NO_TRUNK = { ...without('girth'), ...without('dbh'), ...without('stems') };

function wayOf(values: Values): Way {
  if (readStems(values)) return 'stems';
  return readLength(values, 'dbh') === null ? 'girth' : 'dbh';
}

/** Round the trunk or through it: shown from either, written as it was measured. */
function OneTrunk({ target, way }: { readonly target: Target; readonly way: 'girth' | 'dbh' }) {
  const w = words.value.forms;
  const units = state.units.value;
  const { values } = target;
  const girthM = readLength(values, 'girth');
  const dbhM = readLength(values, 'dbh');
  const throughM = dbhM ?? (girthM === null ? null : girthM / Math.PI);
  const roundM = girthM ?? (dbhM === null ? null : dbhM * Math.PI);
  const shownM = way === 'girth' ? roundM : throughM;
  const about = aboutName(dbhM === null ? 'girth' : 'dbh');
  const read = (typed: string) => {
    const said = takeAbout(typed);
    const length = parseLength(said.text, bareUnit('trunk', units));
    if (length === null || length.lengthM < LEAST_M) return null;
    return { ...NO_TRUNK, ...writeLength(way, length, said.about || values[about] === true) };
  };
  return (
    <TypedField
      target={target}
      label={w.tree[way]}
      hint={w.tree.trunkHint[units]}
      text={shownM === null ? '' : showLength(shownM, 'trunk', units)}
      read={read}
      empty={NO_TRUNK}
      wrong={w.wrong.length.trunk[units]}
      keyboard="decimal"
      about={about}
    />
  );
}

function Stems({ target }: { readonly target: Target }) {
  const w = words.value.forms;
  const units = state.units.value;
  const stems = readStems(target.values);
  const about = aboutName('stems');
  const read = (typed: string) => {
    const said = takeAbout(typed);
    const stemsM = parseStems(said.text, bareUnit('trunk', units));
    const mark = { [about]: said.about || target.values[about] === true || undefined };
    return stemsM && { ...NO_TRUNK, ...writeStems(stemsM, units), ...mark };
  };
  return (
    <TypedField
      target={target}
      label={w.tree.stems}
      hint={w.tree.trunkHint[units]}
      text={stems ? stems.map((stemM) => showLength(stemM, 'trunk', units)).join(' + ') : ''}
      read={read}
      empty={NO_TRUNK}
      wrong={w.wrong.stems[units]}
      about={about}
    />
  );
}

/** The trunk as it was measured: a tape round it, through it, or through each of several. */
export function TrunkFields({ target }: { readonly target: Target }) {
  const w = words.value.forms.tree;
  const switched = useSignal<Way | null>(null);
  const way = switched.value ?? wayOf(target.values);
  return (
    <>
      <RadioRow<Way>
        label={w.measure}
        value={way}
        choices={Object.entries(w.measures) as [Way, string][]}
        choose={(to) => {
          switched.value = to;
        }}
      />
      {way === 'stems' ? (
        <Stems key={way} target={target} />
      ) : (
        <OneTrunk key={way} target={target} way={way} />
      )}
    </>
  );
}
