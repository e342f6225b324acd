import { draw } from './en/draw.js';
import { routes } from './en/routes.js';
import { works } from './en/works.js';

/** English of the parts that are fetched when they are wanted. */
export const late = { draw, routes, works };
