import type { Units } from '@rootreach/core';
import type { SiteDocument } from '../sketch/document.js';
import * as state from '../state.js';
import { today } from '../today.js';
import { words } from '../words/words.js';
import { desk } from './desk.js';
import { fileText } from './file-text.js';
import * as keep from './keep-state.js';

/** Countries whose trades measure in feet and inches. */
const FEET = ['US', 'LR', 'MM'];

/** Units of the place that a browser's language speaks of. */
export function unitsOf(locale: string): Units {
  try {
    return FEET.includes(new Intl.Locale(locale).maximize().region ?? '') ? 'us' : 'metric';
  } catch {
    return 'us';
  }
}

/** A name that no site of this device has yet. */
function freeName(): string {
  const taken = new Set(keep.keptSites.value?.map((site) => site.name));
  let n = 1;
  while (taken.has(words.value.keep.newName(n))) n += 1;
  return words.value.keep.newName(n);
}

/** What a new site begins with: units, and what is said of the whole. */
export interface Begun {
  readonly units?: Units;
  readonly info?: Readonly<Record<string, unknown>>;
}

/** A lot with nothing on it, which nobody has said the place of. */
function blankSite(name: string, units: Units, given: Begun['info']): SiteDocument {
  const info = { schema: 1, name, date: today(), units, located: false, ...given };
  return { key: '', features: [], info, members: {} };
}

/** Begins a site on a blank lot at longitude and latitude 0, and turns to the drawing tools. */
export async function startBlank(begun: Begun = {}): Promise<void> {
  await desk().keeper.flush();
  const name = freeName();
  const units = begun.units ?? state.switchedUnits.value ?? unitsOf(navigator.language);
  await desk().opener.openText(name, fileText(blankSite(name, units, begun.info)), { from: 'begun' });
  state.sheetPlace.value = 'draw';
}
