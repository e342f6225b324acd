import { answers } from './en/answers.js';
import { draw } from './en/draw.js';
import { forms } from './en/forms.js';
import { intake } from './en/intake.js';
import { keep } from './en/keep.js';
import { model } from './en/model.js';
import { routes } from './en/routes.js';
import { view } from './en/view.js';
import { works } from './en/works.js';

/** English: the shape that every other language follows. */
export const en = { ...view, answers, draw, forms, intake, keep, model, routes, works };

export type Words = typeof en;
