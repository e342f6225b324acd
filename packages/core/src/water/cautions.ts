import type { Caution } from '../model/caution.js';
import { cautionsFor } from '../risk/cautions.js';

/** Cautions that stand beside what a line carries: it may lead somebody to send more water down it. */
export const waterCautions: readonly Caution[] = cautionsFor({ discharge: true });
