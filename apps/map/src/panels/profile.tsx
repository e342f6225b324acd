import { useSignal } from '@preact/signals';
import type { LineResult, SegmentResult, Units } from '@rootreach/core';
import { useEffect, useRef } from 'preact/hooks';
import { lengthUnit, span } from '../measure.js';
import * as state from '../state.js';
import { words } from '../words/words.js';
import { ProfileFindings } from './profile-findings.js';
import { ProfileOdds } from './profile-odds.js';
import { ProfilePipe } from './profile-pipe.js';
import { profileScale, rows } from './profile-scale.js';
import { ProfileTrees } from './profile-trees.js';

const w = () => words.value.profile;
const USUAL_WIDTH = 400;

/** A shortcut for the pointer; the two buttons below the drawing do the same for keys. */
function chooseClicked(event: Event): void {
  const hit = event.target instanceof Element ? event.target.closest('[data-stretch]') : null;
  const id = hit?.getAttribute('data-stretch');
  if (id) state.chooseStretch(id);
}

/** What cameras saw, for those who cannot see the drawing. */
function findingWords({ findings }: LineResult, units: Units): string {
  const { profile } = words.value.answers;
  if (findings.length === 0) return '';
  return profile.findings(
    findings.map(({ seen, year, fromM, toM }) =>
      profile.findingAt(profile.seenIn(profile.seen[seen], year), span(fromM, toM, units)),
    ),
  );
}

/** The chosen line as a profile drawing: trees, ground and pipe, and the odds along it. */
export function Profile({ line, chosen }: { readonly line: LineResult; readonly chosen: SegmentResult }) {
  const place = useRef<HTMLDivElement>(null);
  const width = useSignal(USUAL_WIDTH);
  useEffect(() => {
    const element = place.current;
    if (!element) return;
    const watcher = new ResizeObserver(() => {
      width.value = Math.max(260, element.clientWidth);
    });
    watcher.observe(element);
    element.addEventListener('click', chooseClicked);
    return () => {
      watcher.disconnect();
      element.removeEventListener('click', chooseClicked);
    };
  }, [width]);
  const units = state.units.value;
  const scale = profileScale(line, width.value, units);
  const segments = line.segments.flatMap((id) => state.segmentById.value.get(id) ?? []);
  const chosenX = scale.x(chosen.startM);
  return (
    <section class="profile" aria-labelledby="profile-title">
      <h2 id="profile-title">{w().title}</h2>
      <div ref={place}>
        <svg
          width={width.value}
          height={rows.height}
          role="img"
          aria-label={w().label(line, units) + findingWords(line, units)}
        >
          <rect
            class="profile-chosen"
            x={chosenX}
            width={scale.x(chosen.endM) - chosenX}
            y={rows.crownTop - 4}
            height={rows.oddsBottom - rows.crownTop + 4}
          />
          <ProfileTrees line={line} scale={scale} />
          <ProfilePipe line={line} scale={scale} />
          <ProfileFindings line={line} scale={scale} />
          <ProfileOdds segments={segments} scale={scale} />
          <g class="profile-axis">
            {scale.ticks.map(({ atM, text }) => (
              <g key={text} transform={`translate(${scale.x(atM)} 0)`}>
                <path d={`M0 ${rows.oddsBottom}v5`} />
                <text y={rows.axis}>{text}</text>
              </g>
            ))}
            <text class="axis-name" x={scale.right} y={rows.height - 6}>
              {w().axis(lengthUnit(units))}
            </text>
          </g>
          {segments.map((segment) => (
            <rect
              key={segment.id}
              class="profile-hit"
              x={scale.x(segment.startM)}
              width={scale.x(segment.endM) - scale.x(segment.startM)}
              y={rows.crownTop}
              height={rows.oddsBottom - rows.crownTop}
              data-stretch={segment.id}
            />
          ))}
        </svg>
      </div>
      {line.depth.assumed && <p class="quiet">{w().assumedDepth}</p>}
      {line.flowBasis !== 'given' && <p class="quiet">{w().assumedFlow}</p>}
    </section>
  );
}
