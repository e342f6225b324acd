import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import { shrinkPicture } from '../../enter/shrink-picture.js';
import * as sketch from '../../sketch/sketch.js';
import { words } from '../../words/words.js';
import type { Target } from './target.js';

/** A picture of our own making; anything else a file may hold there is not shown. */
const OURS = /^data:image\/(?:jpeg|png|webp);base64,[A-Za-z0-9+/=]+$/;

/** A photo from the phone, kept small with the site. */
export function PhotoField({ target }: { readonly target: Target }) {
  const id = useId();
  const failed = useSignal(false);
  const w = words.value.forms.finding;
  const photo = target.values['photo'];
  const label = words.value.forms.changed(w.photo);
  const take = async (file: File | undefined) => {
    if (!file) return;
    try {
      const small = await shrinkPicture(file);
      failed.value = false;
      sketch.edit(label, target.set({ photo: small }));
    } catch {
      failed.value = true;
    }
  };
  return (
    <div class={failed.value ? 'field field-wrong' : 'field'}>
      <p class="field-name" id={`${id}-name`}>
        {w.photo}
      </p>
      <p class="hint" id={`${id}-hint`}>
        {w.photoHint}
      </p>
      {typeof photo === 'string' && OURS.test(photo) && <img class="photo" src={photo} alt={w.photoAlt} />}
      <div class="field-row">
        <label class="button file-button">
          {w.takePhoto}
          <input
            class="unseen"
            type="file"
            accept="image/*"
            capture="environment"
            aria-describedby={`${id}-hint`}
            aria-invalid={failed.value}
            onChange={(event) => {
              const input = event.currentTarget;
              void take(input.files?.[0]);
              input.value = '';
            }}
          />
        </label>
        {photo !== undefined && (
          <button
            type="button"
            class="button"
            onClick={() => sketch.edit(label, target.set({ photo: undefined }))}
          >
            {w.removePhoto}
          </button>
        )}
      </div>
      {failed.value && (
        <p class="wrong" role="alert">
          {w.photoFailed}
        </p>
      )}
    </div>
  );
}
