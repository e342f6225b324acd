import type { Words } from './en.js';
import { answers } from './es/answers.js';
import { draw } from './es/draw.js';
import { forms } from './es/forms.js';
import { intake } from './es/intake.js';
import { keep } from './es/keep.js';
import { model } from './es/model.js';
import { routes } from './es/routes.js';
import { view } from './es/view.js';
import { works } from './es/works.js';

/** Spanish, of the same shape as English. */
export const es: Words = { ...view, answers, draw, forms, intake, keep, model, routes, works };
