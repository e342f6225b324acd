import { pipeRow, type SegmentResult } from '@rootreach/core';
import { depth } from '../measure.js';
import * as state from '../state.js';
import { words } from '../words/words.js';
import { aboutValue } from './answers/about.js';

const w = () => words.value.card;

function amounts(joints: number, slots: number, crush: number): [string, string, string] {
  return [joints.toFixed(2), slots.toFixed(2), crush.toFixed(2)];
}

/** What the number is made of, and what is known of the pipe there. */
export function Facts({ segment }: { readonly segment: SegmentResult }) {
  const units = state.units.value;
  const { overlapM, lengthM, expectedEntries: entries } = segment;
  const of = (partM: number) => w().of(partM, lengthM, units);
  const rows: readonly (readonly [string, string])[] = [
    [w().facts.nextLook, segment.nextLook],
    [w().facts.material, words.value.model.material(pipeRow(segment.material))],
    [
      w().facts.depth,
      aboutValue('drain', segment.drainId, ['depth_start', 'depth_end'], depth(segment.depthM, units)),
    ],
    [w().facts.joints, w().joints(segment.joints.count, segment.joints.basis)],
    ...(segment.fittings.length > 0
      ? [
          [
            w().facts.fittings,
            segment.fittings.map((f) => `${words.value.fitting[f.type]} ${f.id}`).join(', '),
          ] as const,
        ]
      : []),
    [w().facts.dripline, of(overlapM.dripline)],
    [w().facts.protection, of(overlapM.trunkMultiple)],
    [w().facts.reach, of(overlapM.reach)],
    [w().facts.entries, w().entries(...amounts(entries.joints, entries.slots, entries.crush))],
  ];
  return (
    <section aria-labelledby="facts-title">
      <h2 id="facts-title">{w().factsTitle}</h2>
      <dl class="facts">
        {rows.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
