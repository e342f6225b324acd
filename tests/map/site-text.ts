import { readFileSync } from 'node:fs';
import type { InputFile } from '../../apps/map/src/tasks.js';

/** One of the demonstration sites, as a file that somebody opens. */
export function siteText(name: 'corner-lot' | 'french-drain-plan' | 'small-campus'): InputFile {
  const address = new URL(`../../data/sites/${name}.geojson`, import.meta.url);
  return { name: `${name}.geojson`, text: readFileSync(address, 'utf8') };
}
