import type { LineResult } from '@rootreach/core';
import { words } from '../words/words.js';
import { type ProfileScale, placeLabels, rows } from './profile-scale.js';

const LETTER_PIXELS = 7.2;
/** Half the width at which a single spot is drawn. */
const SPOT_PIXELS = 4;
const LABEL_ABOVE = 13;

/** What cameras saw, on the pipe where they saw it. */
export function ProfileFindings({
  line,
  scale,
}: {
  readonly line: LineResult;
  readonly scale: ProfileScale;
}) {
  const w = words.value.answers.profile;
  const found = line.findings.map((finding) => {
    const from = scale.x(finding.fromM);
    const to = scale.x(finding.toM);
    const middle = (from + to) / 2;
    const half = Math.max(SPOT_PIXELS, (to - from) / 2);
    const atM = (finding.fromM + finding.toM) / 2;
    const text = w.seenIn(w.seen[finding.seen], finding.year);
    return { ...finding, middle, half, y: scale.depthY(scale.depthAt(atM)), text };
  });
  const placed = placeLabels(
    found.map(({ middle, text }) => ({ x: middle, width: text.length * LETTER_PIXELS })),
    scale.left,
    scale.right,
    1,
  );
  const pipeY = (x: number) => scale.depthY(scale.depthAt((x - scale.left) / scale.pixelsPerMetre));
  return (
    <g class="profile-findings">
      {found.map(({ id, seen, middle, half, text }, i) => {
        const label = placed[i];
        const [from, to] = [middle - half, middle + half];
        return (
          <g key={`${id}/${middle}`} class={seen === 'clear' ? 'found found-clear' : 'found'}>
            <path d={`M${from} ${pipeY(from)}L${to} ${pipeY(to)}`} />
            {label && (
              <text x={label.x} y={Math.max(rows.ground + LABEL_ABOVE, pipeY(middle) - LABEL_ABOVE)}>
                {text}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}
