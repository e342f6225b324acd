import { useSignal } from '@preact/signals';
import type { ComponentType } from 'preact';
import { useEffect } from 'preact/hooks';
import { words } from '../words/words.js';

/** A panel whose script is fetched when it is first wanted. */
export function Later({ load }: { readonly load: () => Promise<ComponentType> }) {
  const panel = useSignal<{ readonly show: ComponentType } | null>(null);
  useEffect(() => {
    void load().then((show) => {
      panel.value = { show };
    });
  }, [load, panel]);
  const Show = panel.value?.show;
  return Show ? <Show /> : <p class="loading">{words.value.sheet.loading}</p>;
}
