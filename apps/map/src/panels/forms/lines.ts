import { refOf } from '../../sketch/document.js';
import * as sketch from '../../sketch/sketch.js';

/** Every line of the sketch by id, with what it is called. */
export function lineChoices(): readonly (readonly [id: string, name: string])[] {
  return (sketch.site.value?.features ?? []).flatMap((feature) => {
    const { kind, id } = refOf(feature);
    const name = feature.properties['name'];
    return kind === 'drain' ? [[id, typeof name === 'string' && name !== '' ? name : id] as const] : [];
  });
}
