import { planMiddle } from './drawing-state.js';
import { pictureFrom } from './lay-picture.js';
import type { Underlay } from './picture.js';

/** A picture laid under the part of the plan that is looked at; null where the file is no picture. */
export async function laidInMiddle(file: Blob): Promise<Underlay | null> {
  return pictureFrom(file, planMiddle.value).catch(() => null);
}
