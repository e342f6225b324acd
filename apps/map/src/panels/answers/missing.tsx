import { type MissingInput, missingInputs, type SegmentResult } from '@rootreach/core';
import { length } from '../../measure.js';
import * as sketch from '../../sketch/sketch.js';
import * as state from '../../state.js';
import { words } from '../../words/words.js';
import { fillIn } from './fill-in.js';

/** As far as a large tree's roots are looked for: 1.6 times a reach of 15 m (judgement). */
const ROUND_ABOUT_M = 24;
/** The worst gaps; a longer list is read by nobody. */
const MOST = 3;
/** A gap that widens the range by less than this is not worth a walk (judgement). */
const LEAST_LOG_SD = 0.05;

/** What is not known of a stretch, what would help most first. */
export function Missing({ segment }: { readonly segment: SegmentResult }) {
  const w = words.value.answers.missing;
  const noTrees = state.opened.value?.result.totals.trees === 0;
  const gaps = missingInputs(segment)
    .filter(({ logSd }) => logSd >= LEAST_LOG_SD)
    .slice(0, MOST);
  if (!noTrees && gaps.length === 0) return null;
  const textOf = ({ of, id, field }: MissingInput) => {
    const name = segment.trees.find((tree) => tree.id === id)?.name ?? '';
    return of === 'tree' ? w.ofTree(w.field[field], name, id) : w.field[field];
  };
  return (
    <section class="missing" aria-labelledby="missing-title">
      <h2 id="missing-title">{w.title}</h2>
      {noTrees && <p>{w.noTrees(length(ROUND_ABOUT_M, state.units.value))}</p>}
      <ul class="plain">
        {gaps.map((gap, i) => (
          <li key={`${gap.of}/${gap.id}/${gap.field}`} class="gap">
            <span>
              {i === 0 && !noTrees ? w.first : w.next} {textOf(gap)}
            </span>
            {sketch.site.value && (
              <button
                type="button"
                class="button"
                aria-label={`${w.fill}: ${textOf(gap)}`}
                onClick={() => fillIn(gap)}
              >
                {w.fill}
              </button>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
