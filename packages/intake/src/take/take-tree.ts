import { isNotALiveTree } from '@rootreach/core';
import type { ColumnMap, TreeField } from '../columns/column-map.js';
import { isMissing, isNoSize } from '../values/missing.js';
import { isClass, metresOf, sizeOf } from '../values/size.js';
import { streetOf } from '../values/street.js';
import { whenOf } from '../values/when.js';
import type { Tally } from './intake-report.js';
import { cellOf, type RawRow } from './raw-table.js';
import { speciesOfCode } from './species-of-code.js';

/** Trunks above this are flagged: few street trees are so thick, and most that are written so are slips (judgement). */
const ODD_TRUNK_CM = 200;

type Properties = Record<string, unknown>;

const round = (value: number, step: number): number => Math.round(value / step) * step;
const tidy = (value: number): number => Number(round(value, 0.01).toFixed(2));

/** Reads what a row says of a tree into the names of the site file. */
export class TreeReader {
  constructor(
    private readonly map: ColumnMap,
    private readonly tally: Tally,
  ) {}

  private value(row: RawRow, field: TreeField): unknown {
    const use = this.map.columns[field];
    const value = use === undefined ? undefined : cellOf(row, use.column);
    return isMissing(value) ? undefined : value;
  }

  private text(row: RawRow, field: TreeField): string | undefined {
    const value = this.value(row, field);
    return value === undefined ? undefined : String(value).trim();
  }

  /** The first word of it that says there is no living tree, or null. */
  notAlive(row: RawRow): string | null {
    const said = [this.text(row, 'condition'), this.text(row, 'species'), this.text(row, 'common')];
    return said.find((text) => text !== undefined && isNotALiveTree(text)) ?? null;
  }

  private species(row: RawRow, number: number): Properties {
    const genus = this.text(row, 'genus');
    const species = this.text(row, 'species');
    const common = this.text(row, 'common');
    const botanical =
      genus !== undefined && species !== undefined ? joined(genus, species) : (species ?? genus);
    if (botanical !== undefined)
      return common === undefined ? { species: botanical } : { species: botanical, common };
    if (common !== undefined) return { species: common };
    const code = this.text(row, 'code');
    const named = code === undefined ? null : speciesOfCode(code);
    if (named === null) {
      this.tally.add('species-missing', number, code);
      return {};
    }
    this.tally.add('species-from-code', number, `${code} as ${named}`);
    return { species: named };
  }

  private trunk(row: RawRow, number: number): Properties {
    for (const field of ['trunk', 'girth'] as const) {
      const value = this.value(row, field);
      if (value === undefined) continue;
      const size = sizeOf(value);
      if (size === null) {
        this.tally.add('trunk-unreadable', number, value);
        continue;
      }
      if (isNoSize(size.high ?? size.low)) continue;
      if (isClass(size)) this.tally.add('trunk-class', number, value);
      const metres =
        metresOf(size, this.map.columns[field]?.unit ?? 'cm') / (field === 'girth' ? Math.PI : 1);
      const cm = tidy(metres * 100);
      if (cm > ODD_TRUNK_CM) this.tally.add('trunk-odd', number, value);
      return cm > 0 ? { dbh_cm: cm } : {};
    }
    this.tally.add('trunk-missing', number);
    return {};
  }

  private length(row: RawRow, field: 'height' | 'canopyDiameter' | 'canopyRadius'): number | null {
    const size = sizeOf(this.value(row, field));
    if (size === null || isNoSize(size.high ?? size.low)) return null;
    return tidy(metresOf(size, this.map.columns[field]?.unit ?? 'm'));
  }

  private planted(row: RawRow, number: number): Properties {
    const value = this.value(row, 'planted');
    if (value === undefined || Number(value) === 0) return {};
    const planted = whenOf(value);
    if (planted === null) this.tally.add('date-unreadable', number, value);
    return planted === null ? {} : { planted };
  }

  properties(row: RawRow, number: number): Properties {
    const height = this.length(row, 'height');
    const across = this.length(row, 'canopyDiameter');
    const radius = this.length(row, 'canopyRadius') ?? (across === null ? null : tidy(across / 2));
    const condition = this.text(row, 'condition');
    const street = this.text(row, 'street');
    return {
      kind: 'tree',
      ...this.species(row, number),
      ...this.trunk(row, number),
      ...(radius === null ? {} : { canopy_radius_m: radius }),
      ...(height === null ? {} : { height_m: height }),
      ...(condition === undefined ? {} : { condition }),
      ...this.planted(row, number),
      ...(street === undefined ? {} : { street: streetOf(street) }),
    };
  }
}

/** Genus and epithet in two columns; a species column that already starts with the genus stands alone. */
function joined(genus: string, species: string): string {
  return species.toLowerCase().startsWith(genus.toLowerCase()) ? species : `${genus} ${species}`;
}
