import type { Tool } from '../../draw/tools.js';

/** Our own small pictures of the tools, in a box of 20 by 20. */
const PATHS: Readonly<Record<Exclude<Tool, 'scale'>, string>> = {
  pick: 'M5 3l9 8-4.4.6L12 16.5l-2 1-2.4-5L5 15.6z',
  tree: 'M10 17.5v-6M10 2.5a4.6 4.6 0 0 1 4.4 6A3.7 3.7 0 0 1 12.6 14H7.4a3.7 3.7 0 0 1-1.8-5.5A4.6 4.6 0 0 1 10 2.5z',
  drain: 'M3 5h7a4 4 0 0 1 4 4v6M11 12.5l3 3.5 3-3.5M3 2.5v5',
  fitting: 'M4.5 4.5h11v11h-11zM8.2 4.5v11M11.8 4.5v11',
  building: 'M3 9l7-5.5L17 9M5 8v8.5h10V8',
  paving: 'M3 4h14v12H3zM3 10h14M8 4v6M12.5 10v6',
  pool: 'M3 7c2.3-2 4.7-2 7 0s4.7 2 7 0M3 13c2.3-2 4.7-2 7 0s4.7 2 7 0',
  wall: 'M2.5 6h15M2.5 10h15M2.5 14h15M7 6v4M13 6v4M10 10v4',
  utility: 'M3 16L8 11M10 9l1.5-1.500M13.5 5.500L17 2M5 4h4M5 7h2',
  boundary: 'M3 3h4M10 3h4M17 3v4M17 10v4M17 17h-4M10 17H6M3 17v-4M3 10V6',
  barrier: 'M5 3v14M10 3v14M15 3v14M3 7h14',
  level: 'M10 3v14M4 17h12M6 7l4-4 4 4',
};

export function ToolIcon({ tool }: { readonly tool: Exclude<Tool, 'scale'> }) {
  return (
    <svg class="tool-icon" viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
      <path d={PATHS[tool]} />
    </svg>
  );
}
