import { choose } from '../../draw/draw-with.js';
import { heldPlace } from '../../draw/drawing-state.js';
import { deleteThing, dropBend, squareThing, turnLine } from '../../draw/edit-chosen.js';
import { fewestPlaces, isArea, outlineOf } from '../../draw/outline.js';
import { refOf, type SketchFeature } from '../../sketch/document.js';
import { words } from '../../words/words.js';
import { Form } from '../forms/form.js';
import { DrawnLength } from './drawn-length.js';

const w = () => words.value.draw.chosen;

/** What can be done with the shape of a thing, beside filling in its form. */
export function ChosenThing({ feature }: { readonly feature: SketchFeature }) {
  const ref = refOf(feature);
  const places = outlineOf(feature).length;
  const held = heldPlace.value;
  const canDrop = held !== null && held < places && places > fewestPlaces(feature) && places > 1;
  return (
    <section class="chosen-thing">
      <button type="button" class="back" onClick={() => choose(null)}>
        ← {w().back}
      </button>
      <DrawnLength />
      {ref.kind === 'drain' && (
        <p class="flow-line">
          <span>{w().flow(feature.properties['flow'] === 'reversed')}</span>
          <button type="button" class="button" onClick={() => turnLine(ref)}>
            {w().turn}
          </button>
        </p>
      )}
      <Form />
      <div class="chosen-actions">
        {canDrop && (
          <button type="button" class="button" onClick={() => dropBend(ref, held)}>
            {w().drop}
          </button>
        )}
        {isArea(feature) && (
          <button type="button" class="button" onClick={() => squareThing(ref)}>
            {w().square}
          </button>
        )}
        <button type="button" class="button" onClick={() => deleteThing(ref)}>
          {w().remove}
        </button>
      </div>
    </section>
  );
}
