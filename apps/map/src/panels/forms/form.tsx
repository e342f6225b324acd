import type { ComponentType } from 'preact';
import { type FeatureKind, refOf, type SketchFeature } from '../../sketch/document.js';
import * as sketch from '../../sketch/sketch.js';
import { words } from '../../words/words.js';
import { DrainForm } from './drain-form.js';
import { FindingForm } from './finding-form.js';
import { FittingForm } from './fitting-form.js';
import { BarrierForm, LevelForm, ObstacleForm } from './ground-forms.js';
import type { Target } from './target.js';
import { targetOf } from './target.js';
import { TreeForm } from './tree-form.js';

export interface FeatureFormProps {
  readonly target: Target;
  readonly feature: SketchFeature;
}

const FIELDS: Readonly<Record<FeatureKind, ComponentType<FeatureFormProps>>> = {
  tree: TreeForm,
  drain: DrainForm,
  fitting: FittingForm,
  finding: FindingForm,
  obstacle: ObstacleForm,
  barrier: BarrierForm,
  level: LevelForm,
};

/** What is known of the thing taken up on the sketch, to be filled in or changed; nothing when none is. */
export function Form() {
  const feature = sketch.chosenFeature.value;
  if (!feature) return null;
  const { kind, id } = refOf(feature);
  const Fields = FIELDS[kind];
  const w = words.value.forms;
  return (
    <form
      key={`${kind}/${id}`}
      class="form"
      aria-labelledby="form-title"
      onSubmit={(event) => event.preventDefault()}
    >
      <h2 id="form-title">{w.title(w.kind[kind], id)}</h2>
      <Fields target={targetOf(feature)} feature={feature} />
    </form>
  );
}
