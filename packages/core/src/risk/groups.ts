import type { LineModel } from '../line/line-model.js';

/**
 * Openings that are taken to behave alike: joints of one kind in one material, slots of one make, walls of one
 * material. `gasket/pvc-sdr35`, `slots-wrapped/hdpe-corrugated`, `crush/clay`.
 */
export interface Groups {
  readonly entry: string;
  readonly crush: string;
}

export function groupsOf(line: Pick<LineModel, 'drain' | 'joint'>): Groups {
  const { perforated, wrapped, material } = line.drain;
  const slots = wrapped ? 'slots-wrapped' : 'slots-open';
  return { entry: `${perforated ? slots : line.joint}/${material}`, crush: `crush/${material}` };
}

/** Kind of opening of a group, whatever the material: `gasket` of `gasket/pvc-sdr35`. */
export const kindOf = (group: string): string => group.slice(0, group.indexOf('/'));
