import type { Dig } from '../model/dig.js';
import type { Quantity } from '../model/quantity.js';
import { Bill } from './bill.js';
import { addHours } from './crew-hours.js';
import { addDig } from './dig-lines.js';
import { measuringOf, type QuantityOptions } from './options.js';
import { addPipes } from './pipe-lines.js';
import { byStage } from './stage-order.js';

function check(dig: Dig): void {
  const numbers = {
    lengthM: dig.lengthM,
    depthStartM: dig.depthStartM,
    depthEndM: dig.depthEndM,
    sizeM: dig.sizeM,
  };
  for (const [name, value] of Object.entries(numbers)) {
    if (!(value >= 0 && Number.isFinite(value))) {
      throw new RangeError(`${name} of a dig must be 0 or more, got ${value}`);
    }
  }
}

/**
 * What a job takes: trench by depth class and width, stone, fabric, spoil with swell, pipe by pieces with cut waste,
 * couplings, fittings, tape, surfaces made good, roots cut by hand, barrier, hours by crew rates. SI units.
 * @param digs in the order in which the pipe runs; alike stretches are added up.
 * @param options units that texts are worded in, and what differs from the usual.
 * @throws RangeError for a length or depth below 0 and for options that make no sense.
 */
export function quantitiesOf(digs: readonly Dig[], options: QuantityOptions = {}): Quantity[] {
  const measuring = measuringOf(options);
  for (const dig of digs) check(dig);
  const bill = new Bill(measuring.units);
  bill.add({ code: 'set-up', text: 'crew and machine to the site', unit: 'job', amount: measuring.setUps });
  bill.add({
    code: 'utility-locate',
    text: 'buried utilities located and marked before digging',
    unit: 'job',
    amount: digs.length > 0 ? 1 : 0,
  });
  for (const dig of digs) addDig(bill, dig, measuring);
  addPipes(bill, digs, measuring);
  addHours(bill, digs, measuring);
  return byStage(bill.lines());
}
