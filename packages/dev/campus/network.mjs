import { addHallLines, addYardDrains } from './branches.mjs';
import { emptyLines } from './lines.mjs';
import { addMains, addTrunks, planMains } from './mains.mjs';

/** Lays all lines: branches first, as they say where the mains have corners. Returns the lines, in metres. */
export function layNetwork(sheet, halls) {
  const lines = emptyLines(sheet);
  const reaches = planMains();
  const network = { sheet, lines, reaches };
  addHallLines(network, halls);
  addYardDrains(network);
  addMains(lines, reaches);
  addTrunks(lines);
  lines.draw();
  return lines.drains;
}
