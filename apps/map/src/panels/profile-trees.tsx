import type { LineResult, TreeZones } from '@rootreach/core';
import { length } from '../measure.js';
import * as state from '../state.js';
import { words } from '../words/words.js';
import { type ProfileScale, placeLabels, rows } from './profile-scale.js';

/** Trees shown: the nearest of them. */
const MOST_TREES = 12;
const LETTER_PIXELS = 7.4;
/** A short line is drawn so large that a trunk to scale would be a wall. */
const THICKEST_TRUNK = 14;

interface Standing {
  readonly tree: TreeZones;
  readonly atM: number;
  readonly distanceM: number;
}

function standing(line: LineResult): Standing[] {
  return line.trees
    .flatMap(({ id, atM, distanceM }) => {
      const tree = state.treeById.value.get(id);
      if (!tree) return [];
      const pastAnEnd = (atM <= 0 || atM >= line.lengthM) && distanceM > tree.driplineM;
      return pastAnEnd ? [] : [{ tree, atM, distanceM }];
    })
    .sort((a, b) => a.distanceM - b.distanceM)
    .slice(0, MOST_TREES);
}

function Outline({ standing: { tree, atM, distanceM }, scale }: { standing: Standing; scale: ProfileScale }) {
  const x = scale.x(atM);
  const room = rows.ground - rows.crownTop;
  const half = tree.driplineM * scale.pixelsPerMetre;
  const rise = Math.min(room, Math.max(14, half * 1.3));
  const top = rows.ground - rise;
  const trunkTop = rows.ground - rise * 0.35;
  const trunk = Math.min(THICKEST_TRUNK, Math.max(1.6, tree.stemDiameterM * scale.pixelsPerMetre));
  const near = distanceM < tree.driplineM;
  return (
    <g class={near ? 'tree-outline tree-near' : 'tree-outline'}>
      <path
        class="crown"
        d={`M${x - half} ${trunkTop}A${half} ${trunkTop - top} 0 0 1 ${x + half} ${trunkTop}Z`}
      />
      <path class="trunk" d={`M${x} ${rows.ground}V${trunkTop}`} stroke-width={trunk} />
    </g>
  );
}

/** Trees above the ground where they stand along the line; those whose canopy is over it in full ink. */
export function ProfileTrees({ line, scale }: { readonly line: LineResult; readonly scale: ProfileScale }) {
  const trees = standing(line);
  const texts = trees.map(
    ({ tree, distanceM }) => `${words.value.model.tree(tree.name)}, ${length(distanceM, state.units.value)}`,
  );
  const placed = placeLabels(
    trees.map(({ atM }, i) => ({ x: scale.x(atM), width: (texts[i]?.length ?? 0) * LETTER_PIXELS })),
    0,
    scale.right,
    rows.labels.length,
  );
  return (
    <g class="profile-trees">
      <clipPath id="profile-clip">
        <rect x={scale.left} y="0" width={scale.right - scale.left} height={rows.ground} />
      </clipPath>
      <g clip-path="url(#profile-clip)">
        {trees.map((one) => (
          <Outline key={one.tree.id} standing={one} scale={scale} />
        ))}
      </g>
      {trees.map(({ tree, atM }, i) => {
        const label = placed[i];
        if (!label) return null;
        const y = rows.labels[label.row] ?? 0;
        return (
          <g key={tree.id}>
            <path class="leader" d={`M${scale.x(atM)} ${y + 3}V${rows.crownTop + 4}`} />
            <text x={label.x} y={y}>
              {texts[i]}
            </text>
          </g>
        );
      })}
    </g>
  );
}
