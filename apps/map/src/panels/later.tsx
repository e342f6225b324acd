import { useSignal } from '@preact/signals';
import type { ComponentType } from 'preact';
import { useEffect } from 'preact/hooks';
import { wholeEnglish, words } from '../words/words.js';

interface LaterProps<P extends object> {
  readonly load: () => Promise<ComponentType<P>>;
  /** For the panel; one without any says that it is on its way. */
  readonly props?: P;
}

/** A panel whose script is fetched when it is first wanted. */
export function Later<P extends object = Record<never, never>>({ load, props }: LaterProps<P>) {
  const panel = useSignal<{ readonly show: ComponentType<P> } | null>(null);
  useEffect(() => {
    void Promise.all([load(), wholeEnglish()]).then(([show]) => {
      panel.value = { show };
    });
  }, [load, panel]);
  const Show = panel.value?.show;
  if (Show) return <Show {...(props ?? ({} as P))} />;
  return props ? null : <p class="loading">{words.value.sheet.loading}</p>;
}
