import type { Band, FittingType } from '@rootreach/core';
import type { ComponentChildren } from 'preact';
import { marks } from '../layers/marks.js';
import * as state from '../state.js';
import { words } from '../words/words.js';
import { Mark } from './mark.js';
import { BandWord } from './swatch.js';

const w = () => words.value.key;
const BANDS: readonly Band[] = ['act', 'inspect', 'watch', 'leave', 'cannot-say'];

function Entry({
  sign,
  children,
}: {
  readonly sign: ComponentChildren;
  readonly children: ComponentChildren;
}) {
  return (
    <li>
      <svg viewBox="0 0 36 20" width="36" height="20" aria-hidden="true">
        {sign}
      </svg>
      <span>{children}</span>
    </li>
  );
}

function LineKey() {
  return (
    <section>
      <h2>{w().lines}</h2>
      <ul>
        {BANDS.map((band) => (
          <li key={band} class="key-band">
            <BandWord band={band} />
            <span>{words.value.bandMeaning[band]}</span>
          </li>
        ))}
        <Entry
          sign={
            <g class="key-rank">
              <circle cx="18" cy="10" r="9" />
              <text x="18" y="14.5">
                1
              </text>
            </g>
          }
        >
          {w().rank}
        </Entry>
        <Entry sign={<path class="key-chosen" d="M2 10H34" />}>{w().chosen}</Entry>
      </ul>
    </section>
  );
}

function TreeKey() {
  return (
    <section>
      <h2>{w().trees}</h2>
      <ul>
        <Entry
          sign={
            <>
              <radialGradient id="key-wash">
                <stop class="wash-in" offset="0" />
                <stop class="wash-mid" offset="0.4" />
                <stop class="wash-out" offset="1" />
              </radialGradient>
              <circle cx="18" cy="10" r="10" fill="url(#key-wash)" />
            </>
          }
        >
          {w().wash}
        </Entry>
        <Entry sign={<path class="key-dripline" d="M4 18a14 14 0 0 1 28 0" />}>{w().dripline}</Entry>
        <Entry sign={<path class="key-protection" d="M4 18a14 14 0 0 1 28 0" />}>{w().protection}</Entry>
        <Entry sign={<circle class="key-stem" cx="18" cy="10" r="4" />}>{w().stem}</Entry>
      </ul>
    </section>
  );
}

function GroundKey() {
  const site = state.opened.value?.site;
  const has = (type: string) => site?.obstacles.some((obstacle) => obstacle.type === type) ?? false;
  return (
    <section>
      <h2>{w().ground}</h2>
      <ul>
        {has('building') && (
          <Entry sign={<rect class="key-building" x="8" y="3" width="20" height="14" />}>
            {w().building}
          </Entry>
        )}
        {has('paving') && (
          <Entry sign={<rect class="key-paving" x="8" y="3" width="20" height="14" />}>{w().paving}</Entry>
        )}
        {has('utility') && <Entry sign={<path class="key-utility" d="M2 10H34" />}>{w().utility}</Entry>}
        {has('boundary') && <Entry sign={<path class="key-boundary" d="M2 10H34" />}>{w().boundary}</Entry>}
        {(site?.barriers.length ?? 0) > 0 && (
          <Entry
            sign={
              <>
                <path class="key-barrier" d="M4 10H32" />
                <path class="key-barrier-gaps" d="M4 10H32" />
              </>
            }
          >
            {w().barrier}
          </Entry>
        )}
      </ul>
    </section>
  );
}

function FittingKey() {
  const present = new Set(state.opened.value?.site.fittings.map((fitting) => fitting.type));
  if (present.size === 0) return null;
  return (
    <section>
      <h2>{w().fittings}</h2>
      <ul class="key-fittings">
        {(Object.keys(marks) as FittingType[])
          .filter((type) => present.has(type))
          .map((type) => (
            <Entry
              key={type}
              sign={
                <g transform="translate(8 0)">
                  <Mark type={type} />
                </g>
              }
            >
              {words.value.fitting[type]}
            </Entry>
          ))}
      </ul>
    </section>
  );
}

/** What every mark on the plan means; only those that are on it. */
export function Key() {
  return (
    <details
      class="key"
      open={state.keyOpen.value}
      onToggle={(event) => {
        state.keyOpen.value = event.currentTarget.open;
      }}
    >
      <summary>{w().title}</summary>
      <div class="key-body" style={state.wide.value ? {} : { maxHeight: `${state.keyPixels.value}px` }}>
        <LineKey />
        <TreeKey />
        <GroundKey />
        <FittingKey />
      </div>
    </details>
  );
}
