import type { Band, Chance } from '@rootreach/core';

const PEGS = Array.from({ length: 10 }, (_, i) => i);

/** Ten pegs, the likely number of them filled; the bracket below runs from low to high. */
export function ChanceBar({ chance, band }: { readonly chance: Chance; readonly band: Band }) {
  const x = (share: number) => 2 + share * 296;
  return (
    <svg class={`chance-bar ink-${band}`} viewBox="0 -1 300 36" aria-hidden="true">
      {PEGS.map((peg) => {
        const filled = Math.min(1, Math.max(0, chance.likely * 10 - peg));
        const width = 25.6;
        return (
          <g key={peg} transform={`translate(${x(peg / 10) + 2} 0)`}>
            <rect class="peg" width={width} height="18" rx="3" />
            <rect class="peg-filled" width={width * filled} height="18" rx="3" />
          </g>
        );
      })}
      <path
        class="range"
        d={`M${x(chance.low)} 23v10M${x(chance.high)} 23v10M${x(chance.low)} 28H${x(chance.high)}`}
      />
    </svg>
  );
}
