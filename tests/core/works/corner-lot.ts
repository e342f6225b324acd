import { readFileSync } from 'node:fs';
import type { Site } from '../../../packages/core/src/model/site.js';
import { readSite } from '../../../packages/core/src/validate/read-site.js';
import { CORNER_LOT, here } from '../../cli/call.js';

export const CAMERA = here('data/camera/corner-lot-2026.geojson');
export const AS_OF = '2026-11-25';

const input = (path: string) => ({ name: path, text: readFileSync(path, 'utf8') });

/** The corner lot as nobody has looked into it, and after the camera. */
export const unseen = (): Site => readSite([input(CORNER_LOT)]).site;
export const seen = (): Site => readSite([input(CORNER_LOT), input(CAMERA)]).site;
