import type { LineResult } from '@rootreach/core';
import * as state from '../state.js';
import { words } from '../words/words.js';
import { Mark } from './mark.js';
import { type ProfileScale, rows } from './profile-scale.js';

const TICK = 4;
/** Of the size on the plan. */
const MARK_SCALE = 0.8;

/** Ground and pipe with depth, joints as ticks, fittings as their marks. */
export function ProfilePipe({ line, scale }: { readonly line: LineResult; readonly scale: ProfileScale }) {
  const units = state.units.value;
  const y = (stationM: number) => scale.depthY(scale.depthAt(stationM));
  const { outletEndM, upperEndM } = line.depth;
  const end = scale.x(line.lengthM);
  return (
    <g class="profile-pipe">
      <path
        class="soil"
        d={`M${scale.left} ${rows.ground}H${scale.right}V${y(line.lengthM)}L${scale.left} ${y(0)}Z`}
      />
      <path class="ground" d={`M${scale.left} ${rows.ground}H${scale.right}`} />
      <path class="pipe" d={`M${scale.left} ${y(0)}L${end} ${y(line.lengthM)}`} />
      {line.joints.map(({ atM }) => (
        <path key={atM} class="joint" d={`M${scale.x(atM)} ${y(atM) - TICK}v${TICK * 2}`} />
      ))}
      {line.fittings.map(({ id, type, atM }) => (
        <g
          key={id}
          transform={`translate(${scale.x(atM)} ${y(atM)}) scale(${MARK_SCALE}) translate(-10 -10)`}
        >
          <Mark type={type} />
        </g>
      ))}
      <text class="start" x={scale.left + 8} y={y(0) + 20}>
        {words.value.profile.depth(outletEndM, units)}
      </text>
      <text class="end" x={scale.right} y={y(line.lengthM) + 20}>
        {words.value.profile.depth(upperEndM, units)}
      </text>
    </g>
  );
}
