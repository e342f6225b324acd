import { COLUMNS, HALL_NAMES, ROWS } from './plan.mjs';

const paths = [
  { west: -2, south: 57, east: 228, north: 60 },
  { west: -2, south: 118, east: 228, north: 121 },
  { west: 71, south: 6, east: 74, north: 180 },
  { west: 145, south: 6, east: 148, north: 180 },
];

function addHalls({ between, addRectangle }) {
  const halls = [];
  for (const [r, south] of ROWS.entries()) {
    for (const [c, west] of COLUMNS.entries()) {
      const x = west + between(4, 12);
      const y = south + between(0, 6);
      const hall = {
        west: x,
        south: y,
        east: x + between(30, 44),
        north: y + between(16, 28),
        row: r,
        column: c,
      };
      halls.push(hall);
      addRectangle(hall, {
        kind: 'obstacle',
        type: 'building',
        id: `hall-${halls.length}`,
        name: HALL_NAMES[halls.length - 1],
      });
    }
  }
  return halls;
}

function addPaths({ addRectangle }) {
  for (const [i, path] of paths.entries()) {
    addRectangle(path, { kind: 'obstacle', type: 'paving', id: `path-${i + 1}`, name: `path ${i + 1}` });
  }
}

/** Puts down the halls and the paths between them, and tells where they are. */
export function layGround(sheet) {
  const halls = addHalls(sheet);
  addPaths(sheet);
  return { halls, paths };
}
