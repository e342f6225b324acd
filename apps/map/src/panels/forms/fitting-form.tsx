import { type FittingType, textOf } from '@rootreach/core';
import { refOf, type SketchFeature } from '../../sketch/document.js';
import * as state from '../../state.js';
import { words } from '../../words/words.js';
import { addFinding } from './add-finding.js';
import { ChoiceField, FlagField, NamedChoice } from './choice-field.js';
import { lineChoices } from './lines.js';
import type { Target } from './target.js';
import { TextField } from './text-field.js';
import { isWayIn } from './ways-in.js';

interface FittingFormProps {
  readonly target: Target;
  readonly feature: SketchFeature;
}

/** The line a fitting lies on, as the ranking sees it. */
function lineOf(id: string): string | null {
  const lines = state.opened.value?.result.lines ?? [];
  return lines.find((line) => line.fittings.some((fitting) => fitting.id === id))?.drainId ?? null;
}

export function FittingForm({ target, feature }: FittingFormProps) {
  const w = words.value.forms;
  const { id } = refOf(feature);
  const type = target.values['type'] as FittingType | undefined;
  const given = target.values['drain'];
  const line = given === undefined ? lineOf(id) : textOf(given);
  return (
    <>
      <NamedChoice target={target} label={w.fitting.type} property="type" names={words.value.fitting} />
      <FlagField target={target} label={w.fitting.sealed} property="sealed" />
      <ChoiceField<string>
        target={target}
        label={w.fitting.drain}
        value={given === undefined ? null : textOf(given)}
        choices={lineChoices()}
        write={(drain) => ({ drain: drain ?? undefined })}
        none={w.fitting.nearest}
      />
      <TextField target={target} label={w.note} property="note" long />
      {isWayIn(type) && line !== null && (
        <button type="button" class="button" onClick={() => addFinding(line, id)}>
          {w.fitting.camera}
        </button>
      )}
    </>
  );
}
