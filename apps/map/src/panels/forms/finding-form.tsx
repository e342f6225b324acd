import { type LineResult, type Seen, textOf } from '@rootreach/core';
import { readLength } from '../../enter/quantity.js';
import { length, span } from '../../measure.js';
import { refOf, type SketchFeature } from '../../sketch/document.js';
import * as state from '../../state.js';
import { words } from '../../words/words.js';
import { ChoiceField, NamedChoice } from './choice-field.js';
import { DateField } from './date-field.js';
import { LengthField } from './length-field.js';
import { lineChoices } from './lines.js';
import { NumberField } from './number-field.js';
import { PhotoField } from './photo-field.js';
import type { Target } from './target.js';
import { TextField } from './text-field.js';
import { waysIn } from './ways-in.js';

interface FindingFormProps {
  readonly target: Target;
  readonly feature: SketchFeature;
}

const w = () => words.value.forms.finding;

function placeOn(line: LineResult, fromM: number, toM: number): string {
  const units = state.units.value;
  const name = line.name ?? line.drainId;
  return toM - fromM < 0.05
    ? w().landsAt(name, length(fromM, units))
    : w().lands(name, span(fromM, toM, units));
}

/** Where the entry lands, what it still lacks, or why it cannot be right. */
function landingWords(target: Target, id: string): string {
  const lacksAt = readLength(target.values, 'at') === null;
  const lacksSeen = typeof target.values['seen'] !== 'string';
  if (lacksAt || lacksSeen)
    return lacksAt && lacksSeen ? w().needs.both : lacksAt ? w().needs.at : w().needs.seen;
  const places = (state.opened.value?.result.lines ?? []).flatMap((line) =>
    line.findings.filter((one) => one.id === id).map(({ fromM, toM }) => placeOn(line, fromM, toM)),
  );
  if (places.length > 0) return places.join(' ');
  const issue = state.issues.value.find(
    ({ code, place }) => code === 'finding-misplaced' && place.feature === id,
  );
  return issue ? w().misplaced(words.value.model.issue(issue, state.units.value)) : w().placing;
}

/** What a camera saw by the reel's counter. */
export function FindingForm({ target, feature }: FindingFormProps) {
  const { id } = refOf(feature);
  const text = (name: string) => (target.values[name] === undefined ? null : textOf(target.values[name]));
  return (
    <>
      <ChoiceField<string>
        target={target}
        label={w().drain}
        value={text('drain')}
        choices={lineChoices()}
        write={(drain) => ({ drain: drain ?? undefined })}
      />
      <ChoiceField<string>
        target={target}
        label={w().from}
        value={text('from') ?? 'start'}
        choices={waysIn()}
        write={(from) => ({ from: from ?? undefined })}
      />
      <NamedChoice<'upstream' | 'downstream'>
        target={target}
        label={w().direction}
        property="direction"
        names={w().directions}
        none={w().directionOpen}
      />
      <NamedChoice<Seen> target={target} label={w().seen} property="seen" names={w().seens} />
      <LengthField target={target} label={w().at} quantity="at" measured="ground" />
      <LengthField target={target} label={w().to} hint={w().toHint} quantity="to" measured="ground" />
      <p class="landing" role="status">
        {landingWords(target, id)}
      </p>
      <NumberField target={target} label={w().blocked} property="blocked_pct" least={0} most={100} sign="%" />
      <NumberField
        target={target}
        label={w().entries}
        hint={w().entriesHint}
        property="entries"
        least={1}
        most={500}
        whole
      />
      <DateField target={target} label={w().date} property="date" />
      <PhotoField target={target} />
      <TextField target={target} label={words.value.forms.note} property="note" long />
    </>
  );
}
