// The trees of a seeded town as a city's own table: columns under other names, an address, a long remark that is
// quoted and runs over two lines, so that 1,000,000 trees are more than 300 MB.
import { closeSync, openSync, writeSync } from 'node:fs';

const REMARK =
  '"Seen from the street, ""no"" climbing.\nCrown clear of the wires, no dead wood of note, roots under the kerb lifted it by about two fingers; look again with the next round of the quarter; the owner across the street was told and would rather keep it."';
const HEAD = 'Tree ID,Botanical Name,DBH (cm),Address,Remarks,Longitude,Latitude\n';
const AT_ONCE = 5000;

/** Writes the trees of a GeoJSON text as CSV; returns the bytes written. */
export function writeTable(path, trees) {
  const fd = openSync(path, 'w');
  let bytes = writeSync(fd, HEAD);
  const { features } = JSON.parse(trees);
  for (let from = 0; from < features.length; from += AT_ONCE) {
    const rows = features.slice(from, from + AT_ONCE).map(({ properties, geometry }, i) => {
      const n = from + i;
      const [lon, lat] = geometry.coordinates;
      const address = `${1 + (n % 400)} Street ${Math.floor(n / 400)}`;
      return [`T-${n}`, properties.species, properties.dbh_cm, address, REMARK, lon, lat].join(',');
    });
    bytes += writeSync(fd, `${rows.join('\n')}\n`);
  }
  closeSync(fd);
  return bytes;
}
