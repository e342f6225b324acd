import type { Dig } from '../model/dig.js';
import { crewRates } from '../tables/work-judgement.js';
import type { Bill } from './bill.js';
import { earthOf } from './earth.js';
import type { Measuring } from './options.js';

/** Hours of a crew of two, and those of its small digger. */
interface Hours {
  crew: number;
  machine: number;
}

function dugHours(dig: Dig, measuring: Measuring): Hours {
  const rates = crewRates;
  if (dig.bored) {
    const hours = dig.lengthM / rates.boreMPerHour.value + 2 * rates.borePitHours.value;
    return { crew: hours, machine: 0 };
  }
  const { dugM3, filledM3, stoneM3, topWidthM } = earthOf(dig, measuring);
  const rate = dig.handDig ? rates.handDigM3PerHour.value : rates.machineDigM3PerHour.value;
  const digging = dugM3 / rate;
  const filling = (filledM3 + stoneM3) / rates.fillM3PerHour.value;
  const surface = (topWidthM * dig.lengthM) / rates.surfaceM2PerHour[dig.surface].value;
  return { crew: digging + filling + surface, machine: dig.handDig ? filling : digging + filling };
}

function laidHours({ fittings, lengthM, pipe }: Dig): number {
  const each = fittings.reduce((sum, { type, count }) => {
    const { basinHours, fittingHours, tieInHours } = crewRates;
    const hours = type === 'basin' ? basinHours : type === 'coupling' ? tieInHours : fittingHours;
    return sum + count * hours.value;
  }, 0);
  return each + (pipe === null ? 0 : lengthM / crewRates.layMPerHour.value);
}

/** Adds the hours that the digs take by the crew's rates. */
export function addHours(bill: Bill, digs: readonly Dig[], measuring: Measuring): void {
  const total: Hours = { crew: measuring.setUps * crewRates.setUpHours.value, machine: 0 };
  for (const dig of digs) {
    const { crew, machine } = dugHours(dig, measuring);
    total.crew += crew + laidHours(dig);
    total.machine += machine;
  }
  bill.add({
    code: 'crew-hours',
    text: 'crew of two',
    unit: 'hour',
    amount: total.crew,
    basis: 'by the crew rates: dig, lay, fill, make good, set up',
  });
  bill.add({
    code: 'digger-hours',
    text: 'small digger',
    unit: 'hour',
    amount: total.machine,
    basis: 'dig and fill',
  });
}
