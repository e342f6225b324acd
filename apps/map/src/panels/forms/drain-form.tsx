import { fromInches, fromMillimetres, jointRow, pipeRow, resolveMaterial, textOf } from '@rootreach/core';
import { refOf, type SketchFeature } from '../../sketch/document.js';
import * as sketch from '../../sketch/sketch.js';
import * as state from '../../state.js';
import { words } from '../../words/words.js';
import { addFinding } from './add-finding.js';
import { AreaField } from './area-field.js';
import { ChoiceField, FlagField, NamedChoice } from './choice-field.js';
import { DateField } from './date-field.js';
import { findingName } from './finding-name.js';
import type { MaterialKey } from './keys.js';
import { LengthField } from './length-field.js';
import type { Target } from './target.js';
import { TextField } from './text-field.js';

interface DrainFormProps {
  readonly target: Target;
  readonly feature: SketchFeature;
}

const w = () => words.value.forms;
/** Shortest piece that the site file takes. */
const LEAST_PIECE_M = 0.1;
/** Closer than this to an end a fitting names it, metres. */
const AT_END_M = 1;

function materialOf({ values }: Target): MaterialKey {
  const text = values['material'];
  return typeof text === 'string' ? resolveMaterial(text).key : 'unknown';
}

/** What stands at the two ends as drawn, as far as the ranking tells. */
function endNames(id: string): { readonly start: string; readonly end: string } {
  const { ends, endAt } = w().drain;
  const line = state.lineById.value.get(id);
  if (!line) return { start: ends.start, end: ends.end };
  const named = (atM: number, name: string) => {
    const fitting = line.fittings.find((one) => Math.abs(one.atM - atM) < AT_END_M);
    return fitting ? endAt(name, w().finding.way(words.value.fitting[fitting.type], fitting.id)) : name;
  };
  const upper = named(line.lengthM, ends.upper);
  const outlet = named(0, ends.outlet);
  return line.flowsAsDrawn ? { start: upper, end: outlet } : { start: outlet, end: upper };
}

function PipeFields({ target }: { readonly target: Target }) {
  const d = w().drain;
  const material = materialOf(target);
  const row = pipeRow(material);
  const us = state.units.value === 'us';
  const sizesM = row.sizes.map((size) => (us ? fromInches(size.nominalIn) : fromMillimetres(size.nominalMm)));
  return (
    <>
      <ChoiceField<MaterialKey>
        target={target}
        label={d.material}
        value={material === 'unknown' ? null : material}
        choices={Object.entries(d.materials) as [MaterialKey, string][]}
        write={(key) => ({ material: key ?? undefined })}
        none={w().notKnown}
      />
      <LengthField
        target={target}
        label={d.size}
        quantity="size"
        measured="pipe"
        usualM={sizesM}
        leastM={0.001}
      />
      <LengthField
        target={target}
        label={d.piece}
        hint={d.pieceHint}
        quantity="piece"
        measured="ground"
        usualM={material === 'unknown' ? [] : [row.pieceM.value, ...row.otherPiecesM].sort((a, b) => a - b)}
        leastM={LEAST_PIECE_M}
      />
      <NamedChoice
        target={target}
        label={d.joint}
        property="joint"
        names={d.joints}
        none={material === 'unknown' ? w().notKnown : `${d.usualJoint}: ${d.joints[jointRow(row.joint).key]}`}
      />
      <FlagField target={target} label={d.sealed} property="sealed" />
      <FlagField target={target} label={d.perforated} property="perforated" />
      {target.values['perforated'] === true && (
        <FlagField target={target} label={d.wrapped} property="wrapped" />
      )}
    </>
  );
}

function Seen({ id }: { readonly id: string }) {
  const d = w().drain;
  const findings = (sketch.site.value?.features ?? []).filter(
    ({ properties }) => properties['kind'] === 'finding' && textOf(properties['drain']) === id,
  );
  return (
    <section class="seen" aria-labelledby="seen-title">
      <h3 id="seen-title">{d.findings}</h3>
      {findings.length === 0 && <p class="quiet">{d.noFindings}</p>}
      <ul class="plain">
        {findings.map((finding) => (
          <li key={refOf(finding).id}>
            <button
              type="button"
              class="line-button"
              onClick={() => {
                sketch.chosen.value = refOf(finding);
              }}
            >
              {findingName(finding)}
            </button>
          </li>
        ))}
      </ul>
      <button type="button" class="button" onClick={() => addFinding(id, null)}>
        {d.addFinding}
      </button>
    </section>
  );
}

export function DrainForm({ target, feature }: DrainFormProps) {
  const d = w().drain;
  const { id } = refOf(feature);
  const ends = endNames(id);
  return (
    <>
      <TextField target={target} label={d.name} property="name" />
      <PipeFields target={target} />
      <LengthField
        target={target}
        label={d.depth(ends.start)}
        hint={d.depthHint}
        quantity="depthStart"
        measured="depth"
      />
      <LengthField
        target={target}
        label={d.depth(ends.end)}
        hint={d.depthHint}
        quantity="depthEnd"
        measured="depth"
      />
      <DateField target={target} label={d.installed} property="installed" />
      <DateField target={target} label={d.dug} property="dug" />
      <DateField target={target} label={d.cut} property="cut" />
      <details class="fold">
        <summary>{w().more}</summary>
        <NamedChoice target={target} label={d.flow} property="flow" names={d.flows} none={d.flowOpen} />
        <AreaField target={target} />
        <NamedChoice
          target={target}
          label={d.carries}
          property="carries"
          names={d.carried}
          none={w().notSaid}
        />
        <NamedChoice target={target} label={d.wet} property="wet" names={d.wets} none={w().notKnown} />
        <TextField target={target} label={w().note} property="note" long />
      </details>
      <Seen id={id} />
    </>
  );
}
