import type { SegmentResult } from '@rootreach/core';
import { words } from '../words/words.js';
import type { ProfileScale } from './profile-scale.js';

const RULES = [0, 50, 100];

/** The odds along the line: a band from low to high, and the likely value in the ink of what to do. */
export function ProfileOdds({
  segments,
  scale,
}: {
  readonly segments: readonly SegmentResult[];
  readonly scale: ProfileScale;
}) {
  return (
    <g class="profile-odds">
      {RULES.map((score) => (
        <g key={score}>
          <path class="rule" d={`M${scale.left} ${scale.scoreY(score)}H${scale.right}`} />
          <text x={scale.left - 6} y={scale.scoreY(score) + 5}>
            {score / 10}
          </text>
        </g>
      ))}
      {segments.map(({ id, startM, endM, chance }) => (
        <rect
          key={id}
          class="odds-band"
          x={scale.x(startM)}
          width={scale.x(endM) - scale.x(startM)}
          y={scale.scoreY(chance.high * 100)}
          height={scale.scoreY(chance.low * 100) - scale.scoreY(chance.high * 100)}
        />
      ))}
      {segments.map(({ id, startM, endM, score, band }) => (
        <path
          key={id}
          class={`odds-likely-line stroke-${band}`}
          d={`M${scale.x(startM)} ${scale.scoreY(score)}H${scale.x(endM)}`}
        />
      ))}
      <text class="odds-name" x={scale.left + 4} y={scale.scoreY(100) - 4}>
        {words.value.profile.odds}
      </text>
    </g>
  );
}
