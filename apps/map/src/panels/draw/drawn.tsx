import { choose } from '../../draw/draw-with.js';
import { isDrawn } from '../../draw/pick.js';
import { refOf, type SketchFeature } from '../../sketch/document.js';
import { words } from '../../words/words.js';

/** A longer list is no help; what lies beyond it is reached on the plan. */
const MOST_ROWS = 200;

const w = () => words.value.draw;

/** Everything on the sketch by name: a way to each thing without the plan. */
export function Drawn({ features }: { readonly features: readonly SketchFeature[] }) {
  const drawn = features.filter(isDrawn);
  if (drawn.length === 0) return null;
  return (
    <details class="fold">
      <summary>{w().drawn(drawn.length)}</summary>
      <ul class="plain">
        {drawn.slice(0, MOST_ROWS).map((feature) => {
          const ref = refOf(feature);
          return (
            <li key={`${ref.kind}/${ref.id}`}>
              <button type="button" class="line-button capital" onClick={() => choose(ref)}>
                {w().feature(feature.properties)}
              </button>
            </li>
          );
        })}
      </ul>
    </details>
  );
}
