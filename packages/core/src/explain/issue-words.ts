import type { Issue } from '../model/issue.js';
import type { Units } from '../model/site.js';
import { toFeet, toInches } from '../units/length.js';
import { wordMisplaced } from './misplaced-words.js';

/** Whole from ten up: what a tape shows. */
const bare = (value: number): string => value.toFixed(1).replace(/^(\d{2,})\.0$/, '$1');

const lengthIn = (units: Units, m: number): string =>
  units === 'us' ? `${bare(toFeet(m))} ft` : `${bare(m)} m`;
const trunkIn = (units: Units, m: number): string =>
  units === 'us' ? `${Math.round(toInches(m))} in` : `${bare(m)} m`;
/** International mile, exact. */
const KM_PER_MILE = 1.609344;
const farIn = (units: Units, km: number): string =>
  units === 'us' ? `${Math.round(km / KM_PER_MILE)} miles` : `${Math.round(km)} km`;

/**
 * What is wrong and what was done about it, for every code, in one place.
 * @param issue from a reading or a result.
 * @param units lengths in feet and inches or in metres.
 */
export function wordIssue(issue: Issue, units: Units = 'metric'): string {
  const length = (m: number): string => lengthIn(units, m);
  const trunk = (m: number): string => trunkIn(units, m);
  switch (issue.code) {
    case 'not-json':
      return `${issue.reason}; nothing was read from this file`;
    case 'not-geojson':
      return `not GeoJSON (RFC 7946): ${issue.rule}; set aside`;
    case 'ring-orientation':
      return issue.ring === 'exterior'
        ? 'an outer ring runs clockwise (RFC 7946 wants counter-clockwise); used as it is'
        : 'an inner ring runs counter-clockwise (RFC 7946 wants clockwise); used as it is';
    case 'ring-too-small':
      return 'a ring has fewer than three different points; set aside';
    case 'bare-geometry':
      return `a bare ${issue.type} without properties; it says nothing of what it is`;
    case 'nested-collection':
      return 'a geometry collection inside another one; not used';
    case 'single-member':
      return `a ${issue.type} with one part; read as that part`;
    case 'null-geometry':
      return 'no geometry; not used';
    case 'crs-member':
      return `an old "crs" member${issue.name === '' ? '' : ` (${issue.name})`}; RFC 7946 knows only WGS 84, it was not applied`;
    case 'extra-dimensions':
      return `positions with ${issue.dimensions} numbers; only longitude and latitude are used`;
    case 'excess-precision':
      return `${issue.decimals} decimals of a degree: nine are a tenth of a millimetre`;
    case 'excess-vertices':
      return `${issue.count} points in one feature; used, but slow to draw`;
    case 'holes':
      return 'a polygon with holes; only its outer ring is used';
    case 'duplicate-nodes':
      return 'the same point twice in a row; one is used';
    case 'self-intersection':
      return 'the outline crosses itself; used as it is';
    case 'antimeridian':
      return 'spans more than half the globe: does it cross the 180th meridian? It should be cut there; set aside';
    case 'bbox-order':
      return 'the bbox does not hold the coordinates (order is west, south, east, north); not used';
    case 'not-finite':
      return 'a coordinate is not a finite number; set aside';
    case 'out-of-range':
      return `longitude ${issue.lon}, latitude ${issue.lat} is not on the globe; set aside`;
    case 'projected-coordinates':
      return `${issue.x}, ${issue.y} look like metres or feet of a grid, not degrees; set aside (convert to WGS 84 first)`;
    case 'too-long':
      return `a line of ${farIn(units, issue.lengthKm)}, as if a point were mistyped; left out`;
    case 'zero-length':
      return 'the line has no length; left out';
    case 'bad-value':
      return `expected ${issue.expected}, got ${issue.got}; set aside`;
    case 'misspelt-property':
      return `property "${issue.name}" is not known and was not used: is "${issue.meant}" meant?`;
    case 'odd-depth':
      return `a pipe ${length(issue.depthM)} deep: check the unit; used as it is`;
    case 'missing-value':
      return `missing: ${issue.expected}; set aside`;
    case 'wrong-geometry':
      return `expected ${issue.expected}, got ${issue.got}; set aside`;
    case 'units-disagree':
      return `${issue.first} and ${issue.second} differ by more than 1 %; the first was used`;
    case 'unit-guessed':
      return `column "${issue.column}" names no unit; read as ${issue.unit}`;
    case 'odd-diameter':
      return issue.diameterM > 4
        ? `a trunk of ${trunk(issue.diameterM)} cannot be; taken as not measured`
        : `a trunk of ${trunk(issue.diameterM)} is rare: check the unit; used as it is`;
    case 'duplicate-id':
      return `the id "${issue.id}" is taken; called "${issue.renamed}" here`;
    case 'kind-guessed':
      return `no "kind" given; read as a ${issue.kind}`;
    case 'kind-unknown':
      return issue.kind === ''
        ? 'no "kind" given and nothing tells it; not used'
        : `unknown kind "${issue.kind}"; not used`;
    case 'species-unknown':
      return `species "${issue.text}" is not known; taken as a tree of unknown kind`;
    case 'species-uncertain':
      return `species "${issue.text}" taken as ${issue.taken}`;
    case 'material-unknown':
      return `pipe material "${issue.text}" is not known; taken as a middling pipe`;
    case 'material-uncertain':
      return `pipe material "${issue.text}" taken as ${issue.taken}`;
    case 'not-a-live-tree':
      return `"${issue.text}": not a living tree; left out`;
    case 'fitting-off-line':
      return issue.distanceM === null
        ? `no line within ${units === 'us' ? 'three feet' : 'a metre'} of this fitting; left out`
        : `${length(issue.distanceM)} from its line; left out (a fitting must lie within ${units === 'us' ? 'three feet' : 'a metre'})`;
    case 'finding-misplaced':
      return `${wordMisplaced(issue.reason, length)}; left out`;
    case 'flow-assumed':
      return 'nothing tells which way the water runs; taken as drawn';
    case 'nothing-to-score':
      return issue.missing === 'trees'
        ? 'there is no tree in the input: no risk can be told'
        : 'there is no drain line in the input';
    case 'more-of-the-same':
      return `and ${issue.count} more of "${issue.of}"`;
  }
}
