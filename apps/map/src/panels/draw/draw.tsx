import { useEffect } from 'preact/hooks';
import * as sketch from '../../sketch/sketch.js';
import { words } from '../../words/words.js';
import { SiteForm } from '../forms/site-form.js';
import { ChosenThing } from './chosen-thing.js';
import { Drawn } from './drawn.js';
import { PicturePart } from './picture-part.js';
import { Start } from './start.js';
import { TilesPart } from './tiles-part.js';

/** The sketch: what is being drawn, the thing taken up with its form, and where a new plan begins. */
export function Draw() {
  const site = sketch.site.value;
  const feature = sketch.chosenFeature.value;
  useEffect(
    () => () => {
      sketch.chosen.value = null;
    },
    [],
  );
  return (
    <div class="draw">
      <h1>{words.value.draw.title}</h1>
      {!site && <p>{words.value.draw.tooLarge}</p>}
      {feature && <ChosenThing feature={feature} />}
      {site && !feature && (
        <>
          <Drawn features={site.features} />
          <SiteForm />
          <PicturePart />
        </>
      )}
      {!feature && (
        <>
          <Start />
          <TilesPart />
        </>
      )}
    </div>
  );
}
