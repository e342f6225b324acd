import { answers } from './en/answers.js';
import { forms } from './en/forms.js';
import { intake } from './en/intake.js';
import { keep } from './en/keep.js';
import { model } from './en/model.js';
import { view } from './en/view.js';
import type { late } from './en-late.js';

/** English, as far as the first view needs it. */
export const en = { ...view, answers, forms, intake, keep, model };

/** The shape that every language follows. */
export type Words = typeof en & typeof late;
