import { computed, effect, signal } from '@preact/signals';
import type { Words } from './en.js';
import { en } from './en.js';

export type Language = 'en' | 'es';

/** Language that the user wants. */
export const language = signal<Language>('en');

/** Texts of each language that has been loaded. English always is, but for its late parts: `wholeEnglish` fetches them. */
const catalogues = signal<{ readonly en: Words; readonly es?: Words }>({ en: en as Words });

/** Every text of the page, in the language that is on. */
export const words = computed<Words>(() => catalogues.value[language.value] ?? catalogues.value.en);

/** Fetches the texts of drawing, new lines and works: to be waited for before any of these is shown. */
export async function wholeEnglish(): Promise<void> {
  if ('draw' in catalogues.peek().en) return;
  const { late } = await import('./en-late.js');
  catalogues.value = { ...catalogues.peek(), en: { ...en, ...late } };
}

const KEY = 'rootreach-language';

/** What was chosen last on this device, else what the browser asks for. */
function wanted(): Language {
  try {
    const kept = localStorage.getItem(KEY);
    if (kept === 'en' || kept === 'es') return kept;
  } catch {
    // a page that may keep nothing asks the browser each time
  }
  return navigator.language.toLowerCase().startsWith('es') ? 'es' : 'en';
}

/** Turns the page to another language; another catalogue than the English is fetched first. */
export async function speak(to: Language): Promise<void> {
  if (to === 'es' && !catalogues.value.es) {
    const { es } = await import('./es.js');
    catalogues.value = { ...catalogues.value, es };
  }
  language.value = to;
  try {
    localStorage.setItem(KEY, to);
  } catch {
    // it holds until the page is closed
  }
}

/** Takes up the language wanted, and keeps the page's own mark of it true. */
export async function startSpeaking(): Promise<void> {
  effect(() => {
    document.documentElement.lang = language.value;
  });
  const to = wanted();
  if (to !== 'en') await speak(to);
}
