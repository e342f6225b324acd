import { type BoxIndex, boxOf, indexAround } from '../geometry/box-index.js';
import type { Drain, Fitting, Site } from '../model/site.js';
import type { LineLayout } from './line-model.js';
import { linesNear, type Near, PLACES_SHARED_BY_ALL, SNAP_M } from './snap.js';
import { touchesOf } from './touch.js';

/** A place on a line, by station from its outlet end. */
export interface Spot {
  readonly line: number;
  readonly stationM: number;
}

/** A place on a line at which another one meets it, and where that is on the other. */
export interface Join {
  readonly stationM: number;
  readonly into: Spot;
}

/** What a walk along the pipes asks of a line. */
interface Laid {
  readonly lengthM: number;
  readonly asDrawn: boolean;
  /** Stations by fitting id. */
  readonly fittings: ReadonlyMap<string, number>;
}

/** Two joins of the same two lines closer than this on both are one, metres. */
const SAME_M = 2 * SNAP_M;

function isKnown(joins: readonly Join[], { stationM, into }: Join): boolean {
  return joins.some(
    (j) =>
      j.into.line === into.line &&
      Math.abs(j.stationM - stationM) < SAME_M &&
      Math.abs(j.into.stationM - into.stationM) < SAME_M,
  );
}

/** Value of a map, made when first asked for. */
function remembered<K, V>(map: Map<K, V>, key: K, make: () => V): V {
  const known = map.get(key);
  if (known !== undefined) return known;
  const made = make();
  map.set(key, made);
  return made;
}

/**
 * How the lines of a site hang together. Two meet where an end of one lies on the other, or where both come up
 * to the same basin or cleanout. Worked out line by line as a walk comes to them.
 */
export class Network {
  private readonly laid = new Map<number, Laid>();
  private readonly touches = new Map<number, readonly Join[]>();
  private readonly joins = new Map<number, readonly Join[]>();
  private readonly spots = new Map<string, readonly Spot[]>();
  private readonly numbers: ReadonlyMap<string, number>;
  private readonly fittings: ReadonlyMap<string, Fitting>;
  /** Basins and cleanouts. */
  private readonly hubs: readonly Fitting[];
  private readonly hubIndex: BoxIndex;

  constructor(
    site: Site,
    private readonly lines: LineLayout,
  ) {
    this.numbers = new Map(site.drains.map((drain, i) => [drain.id, i]));
    this.fittings = new Map(site.fittings.map((fitting) => [fitting.id, fitting]));
    this.hubs = site.fittings.filter((fitting) => PLACES_SHARED_BY_ALL.includes(fitting.type));
    this.hubIndex = indexAround(
      this.hubs.map((hub) => hub.position),
      this.hubs.map(() => SNAP_M),
    );
  }

  numberOf(drain: string): number | undefined {
    return this.numbers.get(drain);
  }

  nameOf(line: number): string {
    return this.drain(line).id;
  }

  lengthOf(line: number): number {
    return this.laidOut(line).lengthM;
  }

  /** An end of a line as drawn. */
  endOf(line: number, end: 'start' | 'end'): Spot {
    const { lengthM, asDrawn } = this.laidOut(line);
    return { line, stationM: (end === 'start') === asDrawn ? lengthM : 0 };
  }

  /** Places at which a fitting opens into a line; null where there is no such fitting. */
  spotsOf(id: string): readonly Spot[] | null {
    const fitting = this.fittings.get(id);
    return fitting ? remembered(this.spots, id, () => this.findSpots(fitting)) : null;
  }

  /** All places at which other lines meet this one. */
  joinsOf(line: number): readonly Join[] {
    return remembered(this.joins, line, () => {
      const joins = [...this.touchesOf(line)];
      for (const hub of this.hubIndex.search(...boxOf(this.drain(line).path))) {
        const spots = this.spotsOf((this.hubs[hub] as Fitting).id) ?? [];
        const own = spots.find((spot) => spot.line === line);
        for (const into of own ? spots : []) {
          const join = { stationM: (own as Spot).stationM, into };
          if (into.line !== line && !isKnown(joins, join)) joins.push(join);
        }
      }
      return joins;
    });
  }

  /** True where two lines lie end to end and nothing else comes in: the pipe runs on whatever the flow. */
  isEndToEnd(line: number, { stationM, into }: Join): boolean {
    const alone = (spot: Spot): boolean =>
      (spot.stationM === 0 || spot.stationM === this.lengthOf(spot.line)) &&
      this.joinsOf(spot.line).filter((join) => join.stationM === spot.stationM).length === 1;
    return alone({ line, stationM }) && alone(into);
  }

  private laidOut(line: number): Laid {
    return remembered(this.laid, line, () => {
      const { lengthM, flowsAsDrawn, fittings } = this.lines.at(line);
      return {
        lengthM,
        asDrawn: flowsAsDrawn,
        fittings: new Map(fittings.map((f) => [f.id, f.stationM])),
      };
    });
  }

  private drain(line: number): Drain {
    return this.lines.net.drains[line] as Drain;
  }

  private spotAt({ line, stationM, atEnd }: Near): Spot {
    if (atEnd !== null) return this.endOf(line, atEnd);
    const { lengthM, asDrawn } = this.laidOut(line);
    return { line, stationM: asDrawn ? lengthM - stationM : stationM };
  }

  /** Joins where an end of one line lies on the other. */
  private touchesOf(line: number): readonly Join[] {
    return remembered(this.touches, line, () => {
      const joins: Join[] = [];
      for (const other of this.lines.net.index.search(...boxOf(this.drain(line).path))) {
        if (other === line) continue;
        // from the lower number's side always, so that both lines know the same places
        for (const nears of touchesOf(this.lines.net, Math.min(line, other), Math.max(line, other))) {
          const [low, high] = nears.map((near) => this.spotAt(near)) as [Spot, Spot];
          const [own, into] = line < other ? [low, high] : [high, low];
          const join = { stationM: own.stationM, into };
          if (!isKnown(joins, join)) joins.push(join);
        }
      }
      return joins;
    });
  }

  private findSpots(fitting: Fitting): Spot[] {
    const shared = PLACES_SHARED_BY_ALL.includes(fitting.type);
    const spots: Spot[] = [];
    for (const near of linesNear(this.lines.net, fitting.position)) {
      const stationM = this.laidOut(near.line).fittings.get(fitting.id);
      if (stationM !== undefined) spots.push({ line: near.line, stationM });
      else if (shared && near.atEnd !== null && this.isOpenEnd(this.spotAt(near)))
        spots.push(this.spotAt(near));
    }
    return spots;
  }

  /** True for an end with no fitting and no other line of its own: one drawn a little short of a basin. */
  private isOpenEnd({ line, stationM }: Spot): boolean {
    for (const at of this.laidOut(line).fittings.values()) if (at === stationM) return false;
    return !this.touchesOf(line).some((join) => join.stationM === stationM);
  }
}
