import { words } from '../../words/words.js';
import { NamedChoice } from './choice-field.js';
import { DateField } from './date-field.js';
import { LengthField } from './length-field.js';
import type { Target } from './target.js';
import { TextField } from './text-field.js';

interface GroundFormProps {
  readonly target: Target;
}

export function ObstacleForm({ target }: GroundFormProps) {
  const w = words.value.forms;
  return (
    <>
      <NamedChoice target={target} label={w.obstacle.type} property="type" names={w.obstacle.types} />
      <TextField target={target} label={w.obstacle.name} property="name" />
      <TextField target={target} label={w.note} property="note" long />
    </>
  );
}

export function BarrierForm({ target }: GroundFormProps) {
  const w = words.value.forms;
  return (
    <>
      <LengthField target={target} label={w.barrier.depth} quantity="barrierDepth" measured="depth" />
      <DateField target={target} label={w.barrier.installed} property="installed" />
      <TextField target={target} label={w.note} property="note" long />
    </>
  );
}

export function LevelForm({ target }: GroundFormProps) {
  const w = words.value.forms;
  return (
    <>
      <LengthField
        target={target}
        label={w.level.elevation}
        hint={w.level.hint}
        quantity="elevation"
        measured="level"
        leastM={Number.NEGATIVE_INFINITY}
      />
      <TextField target={target} label={w.note} property="note" long />
    </>
  );
}
