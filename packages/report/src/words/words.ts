import { en } from './en.js';
import { es } from './es.js';

/** All texts of pages and pictures in one language; every language has the same shape. */
export type Words = typeof en;

/** Languages that pages and pictures come in. */
export type Language = 'en' | 'es';

const catalogues: Readonly<Record<Language, Words>> = { en, es };

/** All texts of pages and pictures in one language. */
export const wordsFor = (language: Language): Words => catalogues[language];
