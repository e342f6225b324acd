import {
  type Assumption,
  type Band,
  type FittingType,
  type Issue,
  type LineResult,
  type RankTotals,
  type SegmentResult,
  type Units,
  wordReach,
} from '@rootreach/core';
import * as measure from '../../measure.js';
import { grouped } from '../grouped.js';

const many = (n: number, one: string, more = `${one}s`) => `${grouped(n)} ${n === 1 ? one : more}`;

/** First letter large, for words that come from the model. */
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** A share of draws as per cent; never all or none, since draws are not proof. */
function sure(share: number): string {
  const percent = Math.round(share * 100);
  if (percent >= 99) return 'more than 98 %';
  return percent <= 1 ? 'less than 2 %' : `${percent} %`;
}

const ASSUMED_FIELDS: Readonly<Record<string, string>> = {
  canopyRadiusM: 'canopy radius',
  stemDiameterM: 'trunk',
  species: 'species',
  material: 'pipe',
  installed: 'age',
  depthM: 'depth',
  joint: 'joint',
  pieceM: 'length of a pipe',
  flow: 'direction of flow',
};

/** `from cleanout CO1, upstream, 34 to 44 ft`. */
const whereOf = ({ reach }: SegmentResult, units: Units) =>
  wordReach(reach, {
    length: (m) => measure.length(m, units),
    span: (from, to) => measure.span(from, to, units),
  });

function assumedValue(field: string, value: number | string, units: Units): string {
  if (typeof value === 'string') return value;
  if (field === 'stemDiameterM') return measure.girth(value, units);
  if (field === 'depthM') return measure.depth(value, units);
  if (field.endsWith('M')) return measure.length(value, units);
  return field === 'installed' ? many(Math.round(value), 'year') : String(value);
}

/** Every text of the page, in one language. Another language is another object of the same shape. */
export const view = {
  name: 'rootreach',
  title: (site: string | null) => (site ? `${site} · rootreach` : 'rootreach: the plan'),
  skip: 'Go to the list',

  header: {
    site: 'Site',
    open: 'Open file',
    openHint:
      'Open files from this device, or drop them anywhere on the page: GeoJSON, CSV, zipped shapefile, KML, GPX',
    language: 'Language',
    none: 'No site',
    ownFile: (names: readonly string[]) => (names.length === 1 ? `${names[0]}` : many(names.length, 'file')),
    units: 'Lengths in',
    us: 'ft',
    usLong: 'Feet and inches',
    metric: 'm',
    metricLong: 'Metres',
    drop: 'Drop to open. Several files are read together.',
    demos: {
      'corner-lot': 'Corner lot',
      'french-drain-plan': 'French drain plan',
      'small-campus': 'Small campus',
    },
  },

  band: {
    act: 'Act',
    inspect: 'Inspect',
    watch: 'Watch',
    leave: 'Leave',
    'cannot-say': 'Can’t say',
  } satisfies Record<Band, string>,

  bandMeaning: {
    act: 'deal with it now',
    inspect: 'camera soon',
    watch: 'look in passing',
    leave: 'nothing to do now',
    'cannot-say': 'too little known',
  } satisfies Record<Band, string>,

  invented: 'Invented example',
  loading: 'Reading the site…',
  nothingOpen: 'No site is open. Choose one above, or open a file of your own.',

  headline: {
    act: (n: number) => `${many(n, 'stretch', 'stretches')} to act on.`,
    inspect: (n: number) => `${many(n, 'stretch', 'stretches')} to put a camera in.`,
    watch: (n: number) => `${many(n, 'stretch', 'stretches')} to keep an eye on.`,
    leave: 'Nothing here needs you now.',
    none: 'There is no line to score here.',
    cannotSay: (n: number) => `${many(n, 'stretch', 'stretches')} we can’t speak for: too little is known.`,
    start: (where: string) => `Start ${where}.`,
    extent: (totals: RankTotals, units: Units) =>
      `${many(totals.drains, 'line')}, ${measure.length(totals.lengthM, units)} in all, ${many(totals.trees, 'tree')}.`,
  },

  list: {
    title: 'Worst first',
    more: (n: number) => `Show ${n} more`,
    onlyWorst: (n: number) => `The worst ${n} are listed; tap a line on the plan for any other.`,
    /** A stretch by the crew's own words, the same as on the terminal. */
    row: (segment: SegmentResult, units: Units) =>
      `${whereOf(segment, units)}, on ${segment.drainName ?? `line ${segment.drainId}`}`,
    tree: (name: string, distanceM: number, units: Units) =>
      `${capital(name)}, ${measure.length(distanceM, units)} away`,
    ways: (tree: string, ways: string) => `${tree}; ${ways}`,
    noOdds: 'No odds: too little is known',
    noTree: 'No tree within reach',
    bar: 'Metres of line by what to do',
  },

  card: {
    back: 'All stretches',
    where: (segment: SegmentResult, units: Units) => whereOf(segment, units),
    station: (segment: SegmentResult, units: Units) =>
      `On ${segment.drainName ?? `line ${segment.drainId}`}, ${measure.span(segment.startM, segment.endM, units)} from the outlet end`,
    reach: ({ reach }: SegmentResult, units: Units) =>
      reach.atM < 0.05
        ? `It is the first ${measure.length(reach.toM, units)} from there.`
        : `Slow down at ${measure.length(reach.atM, units)}; you are past it at ${measure.length(reach.toM, units)}.`,
    todo: (advice: string) => `${capital(advice)}.`,
    known: (seen: string, year: number | null) =>
      `Already seen${year === null ? '' : ` in ${Math.floor(year)}`}: ${seen}.`,
    chanceTitle: 'Odds that roots get in',
    knownChanceTitle: 'Odds that the roots stop the flow',
    within: (chance: string, within: string) => {
      const [likely, ...range] = chance.split(', ');
      return { likely: `${likely} ${within}`, range: range.join(', ') };
    },
    scale: '0 to 10 in 10',
    score: (score: number) => `Score ${Math.round(score)} of 100`,
    worstTenth: (share: number) =>
      `We are ${sure(share)} sure that it is among the worst tenth of this site.`,
    treesTitle: 'Which trees',
    treeShare: (share: number) => `${Math.round(share * 100)} % of the odds`,
    factsTitle: 'The stretch',
    facts: {
      nextLook: 'Next look by',
      material: 'Pipe',
      depth: 'Depth to top of pipe',
      joints: 'Joints',
      fittings: 'Fittings',
      dripline: 'Under a canopy',
      protection: 'Within 12 trunk widths',
      reach: 'Within root reach',
      entries: 'Expected entries',
    },
    joints: (count: number, basis: string) => `${count}, from ${basis}`,
    entries: (joints: string, slots: string, crush: string) =>
      `${joints} at joints, ${slots} through slots, ${crush} by crushing`,
    of: (partM: number, wholeM: number, units: Units) =>
      `${measure.length(partM, units)} of ${measure.length(wholeM, units)}`,
    down: 'Downstream',
    up: 'Upstream',
  },

  tree: {
    back: 'All stretches',
    stem: 'Trunk',
    dripline: 'Canopy reaches (dripline)',
    structural: 'Holding roots within',
    protection: 'Protection circle',
    reach: 'Feeding roots reach about',
    threatens: 'Stretches it reaches most',
    none: 'It reaches no line here.',
    share: (share: number, score: number) =>
      `${Math.round(share * 100)} % of a score of ${Math.round(score)}`,
    label: (name: string) => `${capital(name)}: open its card`,
  },

  profile: {
    title: 'Profile of the line',
    label: (line: LineResult, units: Units) =>
      `Profile of ${line.name ?? line.drainId}: ${measure.length(line.lengthM, units)} from the outlet end, ` +
      `pipe ${measure.depth(line.depth.outletEndM, units)} deep at the outlet end and ` +
      `${measure.depth(line.depth.upperEndM, units)} at the upper end.`,
    ground: 'ground',
    depth: (depthM: number, units: Units) => `${measure.depth(depthM, units)} deep`,
    odds: 'odds in 10',
    axis: (unit: string) => `${unit} from the outlet end`,
    assumedDepth: 'Depth was not given; it is assumed.',
    assumedFlow: 'Which way it flows was worked out or taken as drawn. Check the outlet end.',
  },

  key: {
    title: 'Key',
    lines: 'Lines, by what to do',
    trees: 'Trees',
    wash: 'likely roots',
    dripline: 'edge of canopy (dripline)',
    protection: 'protection circle',
    stem: 'trunk, to scale',
    ground: 'Ground',
    building: 'building',
    paving: 'paving',
    utility: 'other buried service',
    barrier: 'root barrier',
    boundary: 'lot line',
    fittings: 'Fittings',
    rank: 'worst stretches, in order',
    chosen: 'the stretch you chose',
    profile: 'On the profile',
    joint: 'joint',
    band: 'low to high odds; the line is the likely value',
  },

  fitting: {
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
  } satisfies Record<FittingType, string>,

  seen: {
    clear: 'clear',
    fine: 'fine roots',
    mass: 'a root mass',
    full: 'filled with roots',
    crushed: 'crushed pipe',
    sag: 'a sag',
    offset: 'an offset joint',
  },

  plan: {
    label: 'Plan of the site. Tab to a stretch; arrow keys step along the lines; Enter opens it.',
    stretch: (segment: SegmentResult, chance: string, units: Units) =>
      `${view.band[segment.band]}: ${view.list.row(segment, units)}; ${chance}`,
    grid: (step: string) => `Grid ${step}`,
    north: 'North is up',
    closer: 'Closer',
    further: 'Further away',
    whole: 'Whole site',
  },

  sheet: {
    label: 'What to do',
    places: { find: 'Find', draw: 'Draw', route: 'New line', work: 'Work', sites: 'Sites' },
    loading: 'One moment…',
    handle: { low: 'Raise the sheet', half: 'Raise the sheet fully', full: 'Lower the sheet' },
  },

  assumed: {
    title: (n: number) => `Assumed: ${many(n, 'value')}`,
    none: 'Nothing had to be assumed here.',
    row: ({ path, value, why }: Assumption, units: Units) => {
      const [, id, field = ''] = path.split('/');
      return `${id}, ${ASSUMED_FIELDS[field] ?? field}: ${assumedValue(field, value, units)} (${why})`;
    },
  },

  issues: {
    title: (n: number) => `About the file: ${many(n, 'note')}`,
    severity: { error: 'Error', warning: 'Warning', notice: 'Notice' },
    row: ({ place }: Issue, text: string) => {
      const feature = place.feature ?? (place.index === null ? null : `feature ${place.index + 1}`);
      const where = [place.file, feature, place.path].filter((part) => part !== null && part !== '');
      return `${where.join(', ')}: ${text}`;
    },
    more: (n: number) => `and ${n} more`,
  },

  cautions: { title: 'Before anybody digs' },

  problem: {
    close: 'Close',
    nothingInIt: 'no tree and no line was found in it',
    couldNotOpen: (names: string, why: string) => `Could not open ${names}: ${why.replace(/\.$/, '')}.`,
    stays: 'The site on the plan stays as it was.',
    notThere: 'it is not there',
    tooLarge: (names: string) =>
      `${names} is too large for this page. Use the command line for a whole town.`,
  },
};
