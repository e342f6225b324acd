/** The lines and fittings of one campus as they are put down; lines are drawn once all of them are known. */
export function emptyLines(sheet) {
  const drains = [];
  let fittings = 0;
  return {
    drains,
    addDrain(path, properties) {
      drains.push({ path, properties: { kind: 'drain', ...properties } });
    },
    addFitting(type, at, drain) {
      fittings += 1;
      sheet.addPoint(at, { kind: 'fitting', id: `f${fittings}`, type, drain });
    },
    draw() {
      for (const { path, properties } of drains) sheet.addLine(path, properties);
    },
  };
}
