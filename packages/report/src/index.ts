/** @rootreach/report: plain results to pictures, charts and self-contained pages. */

export type { CrewInput } from './crew/crew-input.js';
export { crewSheet } from './crew/crew-sheet.js';
export { type LotPictureInput, lotPicture } from './draw/lot-picture.js';
export { type OddsCurveInput, oddsCurve } from './draw/odds-curve.js';
export { type ProfilePictureInput, profilePicture } from './draw/profile-picture.js';
export { tenMarks } from './draw/ten-marks.js';
export type { Markup } from './markup/markup.js';
export { homeownerPage } from './page/homeowner-page.js';
export type { OwnerInput } from './page/owner-input.js';
export { type Language, type Words, wordsFor } from './words/words.js';
