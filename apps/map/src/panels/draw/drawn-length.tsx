import { draft, pointer, reachM, snapped, tool } from '../../draw/drawing-state.js';
import { fallOf } from '../../draw/fall.js';
import { areaM2, distanceM, lengthM } from '../../draw/flat.js';
import { isArea, outlineOf } from '../../draw/outline.js';
import { isDrawTool, tools } from '../../draw/tools.js';
import * as sketch from '../../sketch/sketch.js';
import * as state from '../../state.js';
import { words } from '../../words/words.js';

const w = () => words.value.draw;

/** Length and fall of what is being drawn or was taken up, in the units that are on. */
export function DrawnLength() {
  const parts = draft.value ? ofDraft() : ofChosen();
  return parts.length === 0 ? null : <p class="drawn-length">{parts.join(' ')}</p>;
}

function ofDraft(): string[] {
  const under = draft.value;
  const site = sketch.site.value;
  const last = under?.places.at(-1);
  if (!under || !site || !last) return [];
  const units = state.units.value;
  const pointed = snapped.value?.at ?? pointer.value;
  const next = pointed && distanceM(pointed, last) > reachM() / 2 ? pointed : null;
  const places = next ? [...under.places, next] : under.places;
  const leg = places.length > 1 ? distanceM(places.at(-2) ?? last, places.at(-1) ?? last) : 0;
  const whole = `${w().legs(leg, lengthM(places), units)}.`;
  const text = whole.charAt(0).toUpperCase() + whole.slice(1);
  if (isDrawTool(tool.value) && tools[tool.value].shape === 'area') {
    return places.length > 2 ? [text, `${w().area(areaM2(places), units)}.`] : [text];
  }
  return tool.value === 'drain' ? [text, ...fallText(places, {})] : [text];
}

function fallText(
  path: Parameters<typeof fallOf>[1],
  properties: Readonly<Record<string, unknown>>,
): string[] {
  const site = sketch.site.value;
  const fall = site && fallOf(site, path, properties);
  return fall ? [w().fall(fall.fallM, fall.slope, state.units.value, fall.of)] : [];
}

function ofChosen(): string[] {
  const feature = sketch.chosenFeature.value;
  if (!feature) return [];
  const outline = outlineOf(feature);
  const units = state.units.value;
  if (isArea(feature)) return [`${w().area(areaM2(outline), units)}.`];
  if (outline.length < 2) return [];
  const long = `${w().whole(lengthM(outline), units)}.`;
  if (feature.properties['kind'] !== 'drain') return [long];
  const fall = fallText(outline, feature.properties);
  return [long, ...(fall.length > 0 ? fall : [w().fallUnknown])];
}
