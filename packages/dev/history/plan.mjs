/*
 * Eight invented lots and what lies in them. `lines` gives material (with joint, piece and slots where they are
 * not the material's usual) and year of laying; `works` what was done to a line some time after its first run
 * with roots. Eras and materials are what is usual in the trade (our judgement).
 */
const CLAY = { material: 'clay', joint: 'mortar', pieceFt: 3, sizeIn: 6 };
const CONCRETE = { material: 'concrete', joint: 'mortar', pieceFt: 4, sizeIn: 6 };
const THIN = { material: 'pvc-thin-wall', joint: 'snap', pieceFt: 10, sizeIn: 4 };
const SEWER = { material: 'pvc-sdr35', joint: 'gasket', pieceFt: 14, sizeIn: 4 };
const GLUED = { material: 'pvc-sch40', joint: 'solvent', pieceFt: 10, sizeIn: 4 };
const STICKS = { material: 'hdpe-corrugated', joint: 'snap', pieceFt: 10, sizeIn: 4 };
const OPEN_SLOTS = { material: 'hdpe-corrugated', joint: 'snap', perforated: true, sizeIn: 4 };
const WRAPPED_SLOTS = { ...OPEN_SLOTS, wrapped: true };

const laid = (pipe, installed, more = {}) => ({ ...pipe, ...more, installed });
const FOUL = { carries: 'foul' };

export const lots = [
  {
    file: 'thimble-row',
    name: 'Invented: lot on Thimble Row',
    units: 'us',
    soil: 'loam',
    lines: {
      main: laid(CLAY, 1958),
      'branch-a': laid(CLAY, 1958, { sizeIn: 4 }),
      'branch-b': laid(STICKS, 1994),
      lateral: laid(CLAY, 1952, FOUL),
      footing: laid(OPEN_SLOTS, 1994),
      downspout: laid(THIN, 1994),
    },
    works: { lateral: 'cut' },
  },
  {
    file: 'kettle-lane',
    name: 'Invented: house at Kettle Lane',
    units: 'us',
    soil: 'clay',
    lines: {
      main: laid(THIN, 1986),
      'branch-a': laid(STICKS, 1991),
      'branch-b': laid(STICKS, 1991),
      lateral: laid(CLAY, 1961, FOUL),
      footing: laid(WRAPPED_SLOTS, 2003),
      downspout: laid(GLUED, 2003),
    },
    works: { lateral: 'dug' },
  },
  {
    file: 'saltbox-yard',
    name: 'Invented: saltbox and its yard',
    units: 'us',
    soil: 'sand',
    lines: {
      main: laid(CONCRETE, 1964),
      'branch-a': laid(CONCRETE, 1964, { sizeIn: 4 }),
      'branch-b': laid(THIN, 1989),
      lateral: laid(SEWER, 1989, FOUL),
      footing: laid(OPEN_SLOTS, 1989),
      downspout: laid(STICKS, 1996),
    },
    works: { main: 'cut' },
  },
  {
    file: 'larkspur-close',
    name: 'Invented: corner of Larkspur Close',
    units: 'metric',
    soil: 'clay',
    lines: {
      main: laid(CLAY, 1966),
      'branch-a': laid(THIN, 1984),
      'branch-b': laid(CLAY, 1966, { sizeIn: 4 }),
      lateral: laid(CONCRETE, 1966, FOUL),
      footing: laid(WRAPPED_SLOTS, 1998),
      downspout: laid(THIN, 1984),
    },
    works: {},
  },
  {
    file: 'mill-steps',
    name: 'Invented: terrace at Mill Steps',
    units: 'metric',
    soil: 'loam',
    lines: {
      main: laid(SEWER, 1992),
      'branch-a': laid(SEWER, 1992),
      'branch-b': laid(GLUED, 1992),
      lateral: laid(CLAY, 1949, FOUL),
      footing: laid(OPEN_SLOTS, 1992),
      downspout: laid(SEWER, 1992),
    },
    works: { lateral: 'cut' },
  },
  {
    file: 'quince-court',
    name: 'Invented: flats at Quince Court',
    units: 'us',
    soil: 'loam',
    lines: {
      main: laid(STICKS, 1985),
      'branch-a': laid(STICKS, 1985),
      'branch-b': laid(STICKS, 1985),
      lateral: laid(SEWER, 1985, FOUL),
      footing: laid(OPEN_SLOTS, 1985),
      downspout: laid(STICKS, 1985),
    },
    works: { main: 'dug' },
  },
  {
    file: 'lantern-hill',
    name: 'Invented: two houses on Lantern Hill',
    units: 'us',
    soil: 'loam',
    lines: {
      main: laid(CONCRETE, 1957),
      'branch-a': laid(THIN, 1987),
      'branch-b': laid(CONCRETE, 1957, { sizeIn: 4 }),
      lateral: laid(SEWER, 1987, FOUL),
      footing: laid(WRAPPED_SLOTS, 1987),
      downspout: laid(GLUED, 1987),
    },
    works: { 'branch-b': 'cut' },
  },
  {
    file: 'orchard-gate',
    name: 'Invented: old orchard gate',
    units: 'metric',
    soil: 'sand',
    lines: {
      main: laid(THIN, 1982),
      'branch-a': laid(THIN, 1982),
      'branch-b': laid(STICKS, 1997),
      lateral: laid(CLAY, 1955, FOUL),
      footing: laid(OPEN_SLOTS, 1990),
      downspout: laid(SEWER, 1997),
    },
    works: {},
  },
];

/** Trees to draw from: name, and trunk in centimetres from and to. */
export const kinds = [
  ['Acer saccharinum', 45, 85],
  ['Ulmus americana', 50, 95],
  ['Salix babylonica', 40, 80],
  ['Populus deltoides', 45, 90],
  ['Quercus rubra', 35, 80],
  ['Acer platanoides', 25, 60],
  ['Betula nigra', 20, 40],
  ['Fraxinus pennsylvanica', 30, 65],
  ['Gleditsia triacanthos', 25, 55],
  ['Malus', 12, 28],
];
