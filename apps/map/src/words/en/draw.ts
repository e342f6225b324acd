import type { ObstacleType, Units } from '@rootreach/core';
import type { DrawTool } from '../../draw/tools.js';
import * as measure from '../../measure.js';

const many = (n: number, one: string, more = `${one}s`) => `${n} ${n === 1 ? one : more}`;

const obstacle: Record<ObstacleType, string> = {
  building: 'building',
  paving: 'paving',
  pool: 'pool',
  wall: 'wall',
  utility: 'other service',
  boundary: 'lot line',
};

const kinds: Readonly<Record<string, string>> = {
  tree: 'tree',
  drain: 'drain line',
  barrier: 'root barrier',
  level: 'spot level',
};

const fittings: Readonly<Record<string, string>> = {
  wye: 'wye',
  tee: 'tee',
  bend: 'bend',
  coupling: 'coupling',
  reducer: 'reducer',
  basin: 'catch basin',
  cleanout: 'cleanout',
  downspout: 'downspout',
  outlet: 'outlet',
  cap: 'cap',
};

const word = (properties: Readonly<Record<string, unknown>>): string => {
  const { kind, type } = properties as { readonly kind?: string; readonly type?: string };
  if (kind === 'obstacle') return obstacle[type as ObstacleType] ?? 'thing on the ground';
  if (kind === 'fitting') return fittings[type ?? ''] ?? 'fitting';
  return kinds[kind ?? ''] ?? 'thing';
};

/** 1 in 50; level ground has no such number. */
const slope = (ratio: number): string => {
  const run = 1 / Math.abs(ratio);
  return run > 2000 ? 'hardly any slope' : `1 in ${run < 10 ? run.toFixed(1) : Math.round(run)}`;
};

/** Texts of drawing on the plan. */
export const draw = {
  title: 'Draw the lot',
  bar: 'Drawing tools',
  pick: 'Pick',
  tools: {
    tree: 'Tree',
    drain: 'Drain',
    fitting: 'Fitting',
    building: 'Building',
    paving: 'Paving',
    pool: 'Pool',
    wall: 'Wall',
    utility: 'Utility',
    boundary: 'Lot line',
    barrier: 'Barrier',
    level: 'Level',
  } satisfies Record<DrawTool, string>,

  hint: {
    pick: 'Tap a thing to change it, or take a tool.',
    point: {
      tree: 'Tap where the trunk stands.',
      fitting: 'Tap where it sits. It is drawn to a line nearby.',
      level: 'Set the height, then tap where it was taken.',
    },
    first: {
      drain: 'Start where the water comes in, end where it comes out.',
      area: 'Tap each corner.',
      line: 'Tap along it, from one end to the other.',
    },
    next: 'Tap the next place. Tap the last one again to finish.',
    closing: 'Tap the next corner. Tap the first one again to finish.',
    scaleFirst: 'Tap one end of something you know the length of.',
    scaleSecond: 'Tap its other end.',
    scaleDone: 'Say how long it is, in the sheet.',
    aim: 'Move the plan under the cross. Arrow keys move it too; Enter puts a place, Escape leaves off.',
  },
  actions: {
    aim: 'Aim',
    aimHint: 'Aim with a fixed cross instead of a tap',
    put: 'Put here',
    back: 'Back',
    backHint: 'Take the last place back',
    finish: 'Finish',
    cancel: 'Leave off',
    done: 'Done',
    undo: 'Undo',
    close: 'Close',
  },
  cross: 'Cross to aim with',

  drew: (tool: string) => `Drew: ${tool.toLowerCase()}`,
  deleted: (name: string) => `Deleted ${name}.`,
  moved: (name: string) => `Moved ${name}`,
  bendMoved: (name: string) => `Moved a place of ${name}`,
  bendAdded: (name: string) => `Added a place to ${name}`,
  bendDropped: (name: string) => `Took a place out of ${name}`,
  turned: (name: string) => `Turned the flow of ${name}`,
  squaredUp: (name: string) => `Squared ${name}`,
  feature: (properties: Readonly<Record<string, unknown>>): string => {
    const { name, species, id } = properties as Readonly<Record<string, unknown>>;
    const own = [name, species].find((one) => typeof one === 'string' && one !== '');
    return `${word(properties)} ${own ?? (typeof id === 'object' ? '' : id)}`;
  },
  fittings,
  stop: (name: string) => `${name}. Enter to change it, arrow keys to move it, Delete to delete it.`,
  handle: (index: number, of: number) =>
    `Place ${index + 1} of ${of}. Arrow keys move it, Delete takes it out.`,
  between: (index: number) => `New place after place ${index + 1}`,
  onto: {
    fitting: 'on a fitting',
    end: 'on the end of a line',
    bend: 'on a bend',
    line: 'on a line',
    corner: 'on a corner',
  },

  legs: (leg: number, whole: number, units: Units) =>
    `this leg ${measure.length(leg, units)}, ${measure.length(whole, units)} in all`,
  whole: (lengthM: number, units: Units) => `${measure.length(lengthM, units)} long`,
  area: (areaM2: number, units: Units) =>
    units === 'us' ? `${Math.round(areaM2 / 0.3048 ** 2)}\u00a0ft²` : `${areaM2.toFixed(1)}\u00a0m²`,
  fall: (fallM: number, ratio: number, units: Units, of: 'pipe' | 'pipe-on-level-ground' | 'ground') => {
    const what = { pipe: 'Pipe', 'pipe-on-level-ground': 'Pipe, on level ground,', ground: 'Ground' }[of];
    if (Math.abs(fallM) < 0.0005) return `${what} does not fall at all.`;
    const way = fallM > 0 ? 'falls' : 'rises';
    return `${what} ${way} ${measure.depth(Math.abs(fallM), units)} towards the outlet end, ${slope(ratio)}.`;
  },
  fallUnknown: 'Fall: put depths on the line or spot levels near its ends.',

  chosen: {
    back: 'Everything drawn',
    turn: 'Turn the flow round',
    flow: (reversed: boolean): string =>
      reversed
        ? 'Water runs against the way it was drawn: the first place is the outlet end.'
        : 'Water runs the way it was drawn: the last place is the outlet end.',
    square: 'Square the corners',
    drop: 'Take this place out',
    remove: 'Delete',
  },
  squared: 'Square corners',
  fittingType: 'Kind of fitting',
  elevation: (unit: string) => `Height, ${unit}`,

  drawn: (n: number) => `Everything drawn: ${many(n, 'thing')}`,
  tooLarge: 'This file is too large to be changed here. It can be looked at and ranked.',

  start: {
    title: 'Begin a new plan',
    text: 'The plan that is open stays on this device if you changed it.',
    feet: 'Blank lot in feet',
    metres: 'Blank lot in metres',
    here: 'Where I am standing',
    hereHint: 'Asks this device for its position. It is written into the plan and goes nowhere else.',
    picture: 'From a picture',
    pictureHint: 'A plat, a sketch on paper or an aerial picture. It is kept in the site file.',
    name: 'New lot',
    failed: 'The new plan could not be begun.',
  },
  position: {
    asking: 'Asking the device…',
    off: 'The device did not give its position.',
  },
  picture: {
    title: 'Picture under the plan',
    lay: 'Lay a picture under the plan',
    unreadable: 'This file is no picture that the browser can read.',
    laid: 'Laid a picture under the plan',
    notScaled:
      'Now scale it: tap both ends of something you know the length of, such as a wall or a lot line.',
    scale: 'Scale by two places',
    length: (unit: string) => `Length between the two places, ${unit}`,
    apply: 'Scale the picture',
    scaled: 'Scaled the picture',
    wide: (widthM: number, units: Units) => `The picture is ${measure.length(widthM, units)} wide.`,
    opacity: 'How strong',
    opacityChanged: 'Changed how strong the picture is',
    turn: 'Turned clockwise, degrees',
    turnChanged: 'Turned the picture',
    moveHint: 'Drag the square in its middle to move it; arrow keys move it too.',
    handle: 'Middle of the picture. Arrow keys move it.',
    moved: 'Moved the picture',
    remove: 'Take the picture away',
    removed: 'Took the picture away',
  },
  tiles: {
    title: 'Map tiles from an address of yours',
    text:
      'Nothing is fetched unless you give an address. Then each picture is asked of that server, which sees ' +
      'what part of the map you look at. The page is loaded anew to allow that one server.',
    address: 'Address with {z}, {x} and {y}',
    attribution: 'Who made the map (shown on the plan)',
    use: 'Use this address',
    stop: 'Stop using it',
    wrong: 'The address needs https:// at its start, and {z}, {x} and {y}.',
    unnamed: 'Say who made the map: its licence asks for it.',
    unkept: 'This browser keeps nothing for this page, so that the address cannot be remembered.',
  },
};
