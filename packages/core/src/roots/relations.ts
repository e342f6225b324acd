import type { SourceKey } from '../sources/bibliography.js';
import type { HowKnown } from '../sources/how-known.js';

/** One relation of the model and what it rests on. */
export interface Relation {
  readonly what: string;
  readonly source: SourceKey;
  readonly known: HowKnown;
}

/** Every published relation the roots of a tree are worked out with, for explanations. */
export const relations: readonly Relation[] = [
  {
    what: 'trunk of several stems; 12 trunk diameters of protection, 15 m at most',
    source: 'bs-5837-2012',
    known: 'quoted',
  },
  {
    what: 'protection between 2 and 15 m; radius of the roots that hold the tree up',
    source: 'as-4970-2009',
    known: 'quoted',
  },
  { what: 'protection by tolerance and age', source: 'matheny-clark-1998', known: 'memory' },
  { what: 'crown from trunk, growth of trunks', source: 'mcpherson-2016', known: 'calculated' },
  { what: 'root radius about 38 trunk diameters in young trees', source: 'day-2010', known: 'read' },
  {
    what: 'roots spread about three times as far as branches',
    source: 'gilman-1988-spread',
    known: 'memory',
  },
  {
    what: 'established trees root to about three times the crown',
    source: 'ifas-establishment',
    known: 'read',
  },
  {
    what: 'share of roots beyond the dripline, a check of the root curve',
    source: 'gilman-1988-hortscience',
    known: 'read',
  },
  { what: 'root counts by distance, a check of the root curve', source: 'upson-2015', known: 'calculated' },
  { what: 'how far each genus does damage', source: 'cutler-richardson-1989', known: 'quoted' },
  {
    what: 'share of roots deeper than the pipe in undisturbed ground',
    source: 'jackson-1996',
    known: 'read',
  },
  { what: 'roots grow back 0.45 to 1.2 m a year', source: 'gilman-1990', known: 'read' },
  { what: 'no trench within three trunk diameters', source: 'smiley-2008', known: 'read' },
  {
    what: 'up to a tenth of the protection circle is a minor loss, roots that hold the tree apart',
    source: 'as-4970-2009',
    known: 'quoted',
  },
  { what: 'within six trunk diameters only with an arborist', source: 'ansi-a300-part8', known: 'quoted' },
  {
    what: 'where a bore under roots starts, by trunk diameter',
    source: 'municipal-tunnelling-table',
    known: 'quoted',
  },
  { what: 'how far perforated drains keep from trees', source: 'tile-drain-guidance', known: 'read' },
  { what: 'metres from degrees', source: 'wgs84', known: 'memory' },
];
