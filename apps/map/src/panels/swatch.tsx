import type { Band } from '@rootreach/core';
import { words } from '../words/words.js';

/** A short piece of the line as the plan draws it; styled in the style sheet with the same inks. */
export function Swatch({ band }: { readonly band: Band }) {
  const y = 8;
  return (
    <svg class={`swatch swatch-${band}`} viewBox="0 0 36 16" width="36" height="16" aria-hidden="true">
      {band === 'act' && <path class="swatch-casing" d={`M7 ${y}H29`} />}
      <path class="swatch-line" d={band === 'act' ? `M7 ${y}H29` : `M2 ${y}H34`} />
      {band === 'inspect' && <path class="swatch-centre" d={`M2 ${y}H34`} />}
    </svg>
  );
}

/** The mark of the line and, always beside it, the word. */
export function BandWord({ band }: { readonly band: Band }) {
  return (
    <span class="band-word">
      <Swatch band={band} />
      <b>{words.value.band[band]}</b>
    </span>
  );
}
