import { computed, signal } from '@preact/signals';
import type { Words } from './en.js';
import { en } from './en.js';

export type Language = 'en' | 'es';

/** Language of the page. */
export const language = signal<Language>('en');

/** Texts of each language that has been loaded; English always is. */
export const catalogues = signal<{ readonly en: Words; readonly es?: Words }>({ en });

/** Every text of the page, in the language that is on. */
export const words = computed<Words>(() => catalogues.value[language.value] ?? en);
