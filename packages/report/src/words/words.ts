import { en } from './en.js';
import { es } from './es.js';

/** All texts of pages and pictures in one language; every language has the same shape. */
export type Words = typeof en;

export type Language = 'en' | 'es';

const catalogues: Readonly<Record<Language, Words>> = { en, es };

export const wordsFor = (language: Language): Words => catalogues[language];
