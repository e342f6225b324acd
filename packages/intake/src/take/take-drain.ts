import type { ColumnMap, DrainField } from '../columns/column-map.js';
import { isMissing, isNoSize } from '../values/missing.js';
import { pipeSizeOf } from '../values/pipe-size.js';
import { sizeOf } from '../values/size.js';
import { streetOf } from '../values/street.js';
import { METRES } from '../values/units.js';
import { whenOf } from '../values/when.js';
import type { Tally } from './intake-report.js';
import { isNotInUse } from './not-in-use.js';
import { cellOf, type RawRow } from './raw-table.js';

/** Words for water that is foul; storm drains are the default. */
const FOUL =
  /\b(?:sanitary|foul|sewage|wastewater|waste water|combined|schmutzwasser|mischwasser|eaux us[eé]es|unitaire)\b/i;

type Properties = Record<string, unknown>;

/** Reads what a row says of a line into the names of the site file. */
export class DrainReader {
  constructor(
    private readonly map: ColumnMap,
    private readonly tally: Tally,
  ) {}

  private value(row: RawRow, field: DrainField): unknown {
    const use = this.map.columns[field];
    const value = use === undefined ? undefined : cellOf(row, use.column);
    return isMissing(value) ? undefined : value;
  }

  private text(row: RawRow, field: DrainField): string | undefined {
    const value = this.value(row, field);
    return value === undefined ? undefined : String(value).trim();
  }

  /** The status of a pipe that is not in use, or null. */
  notInUse(row: RawRow): string | null {
    const status = this.text(row, 'condition');
    return status !== undefined && isNotInUse(status) ? status : null;
  }

  private size(row: RawRow, number: number): Properties {
    const value = this.value(row, 'size');
    if (value === undefined || (Number.isFinite(Number(value)) && isNoSize(Number(value)))) {
      this.tally.add('size-missing', number);
      return {};
    }
    const size =
      pipeSizeOf(value, this.map.columns.size?.unit ?? 'mm') ??
      pipeSizeOf(Number(value), this.map.columns.size?.unit ?? 'mm');
    if (size === null) {
      this.tally.add('size-unreadable', number, value);
      return {};
    }
    if (size.shape === 'box') this.tally.add('size-box', number, value);
    return { size_mm: Math.round(size.sizeM * 10_000) / 10 };
  }

  private installed(row: RawRow, number: number): Properties {
    const value = this.value(row, 'installed');
    if (value === undefined || Number(value) === 0) return {};
    const installed = whenOf(value);
    if (installed === null) this.tally.add('date-unreadable', number, value);
    return installed === null ? {} : { installed };
  }

  private depth(row: RawRow): Properties {
    const size = sizeOf(this.value(row, 'depth'));
    if (size === null || size.high === null || isNoSize(size.high)) return {};
    const metres =
      Math.round(
        ((size.low + size.high) / 2) * METRES[size.unit ?? this.map.columns.depth?.unit ?? 'm'] * 100,
      ) / 100;
    return { depth_start_m: metres, depth_end_m: metres };
  }

  properties(row: RawRow, number: number): Properties {
    const material = this.text(row, 'material');
    if (material === undefined) this.tally.add('material-missing', number);
    const name = this.text(row, 'name');
    const carries = this.text(row, 'carries');
    const street = this.text(row, 'street');
    return {
      kind: 'drain',
      ...(name === undefined ? {} : { name }),
      ...(material === undefined ? {} : { material }),
      ...this.size(row, number),
      ...this.installed(row, number),
      ...this.depth(row),
      ...(carries !== undefined && FOUL.test(carries) ? { carries: 'foul' } : {}),
      ...(street === undefined ? {} : { street: streetOf(street) }),
    };
  }
}
