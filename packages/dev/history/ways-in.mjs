const fittingAt = (line, id) => line.fittings.find((fitting) => fitting.id === id)?.stationM;

const downFrom = (from, line) => ({
  from,
  counterOf: (stationM) => line.lengthM - stationM,
  order: -1,
  fromM: line.lengthM,
});
const upFrom = (from, startM, fromM = 0) => ({
  from,
  counterOf: (stationM) => stationM + startM,
  order: 1,
  fromM,
});

/** Fitting at the upper end of each line. */
const TOP = {
  main: 'B1',
  'branch-a': 'DS1',
  'branch-b': 'B2',
  lateral: 'CO2',
  footing: 'CO3',
  downspout: 'DS2',
};
/** Wye of the main at which a branch comes in. */
const WYE = { 'branch-a': 'W1', 'branch-b': 'W2' };

/** Ways in which a crew sends a reel along a line, with what the counter then reads at a station. */
export function waysInto(id, line, main) {
  const ways = [downFrom(TOP[id], line), downFrom('start', line)];
  const cleanoutM = fittingAt(main, 'CO1');
  // a branch is reached through the cleanout of the main, a stretch of the main first
  if (WYE[id]) return [...ways, upFrom('CO1', fittingAt(main, WYE[id]) - cleanoutM)];
  if (id === 'main') return [...ways, upFrom('end', 0), upFrom('CO1', -cleanoutM, cleanoutM)];
  return [...ways, upFrom('end', 0)];
}
