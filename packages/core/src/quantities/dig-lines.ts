import type { Dig, DigSurface } from '../model/dig.js';
import type { Units } from '../model/site.js';
import { trenchNumbers } from '../tables/work-judgement.js';
import type { Bill } from './bill.js';
import type { DepthClass } from './depth-class.js';
import { type Earth, earthOf } from './earth.js';
import type { Measuring } from './options.js';
import { acrossWords } from './wording.js';

function depthWords(depthClass: DepthClass, units: Units): string {
  const { shallowToM, midToM, protectedFromM } = trenchNumbers;
  const [first, second, third] = [shallowToM, midToM, protectedFromM].map(({ value }) =>
    units === 'us' ? `${Math.round(value / 0.3048)} ft` : `${value.toFixed(1)} m`,
  );
  const words: Record<DepthClass, string> = {
    shallow: `up to ${first} deep`,
    mid: `${first} to ${second} deep`,
    deep: `${second} to ${third} deep`,
    walled: `${third} and deeper, walls protected`,
  };
  return words[depthClass];
}

const REINSTATE: Readonly<Record<DigSurface, string>> = {
  lawn: 'turf lifted and laid back, gaps seeded',
  bed: 'bed plants lifted and set back, mulch made good',
  gravel: 'gravel raked aside and back, topped up',
  paving: 'paving broken out and made good',
  bare: 'bare ground raked level',
};

function addTrench(bill: Bill, dig: Dig, earth: Earth, measuring: Measuring): void {
  const { units } = measuring;
  const wide = acrossWords(earth.widthM, units);
  for (const { depthClass, lengthM, volumeM3 } of earth.parts) {
    const way = dig.handDig ? 'trench dug by hand' : 'trench dug by machine';
    bill.add({
      code: dig.handDig ? `trench-by-hand-${depthClass}` : `trench-${depthClass}`,
      text: `${way}, ${depthWords(depthClass, units)}, ${wide} wide`,
      unit: 'm3',
      amount: volumeM3,
      alongM: lengthM,
      apart: wide,
    });
  }
  bill.add({
    code: 'shoring',
    text: 'trench walls shored or boxed',
    unit: 'm2',
    amount: earth.shoredM2,
    basis: 'both faces',
  });
  if (dig.handDig) {
    bill.add({
      code: 'root-cutting',
      text: 'roots cut clean by hand along the trench',
      unit: 'm',
      amount: dig.lengthM,
    });
  }
}

function addFill(bill: Bill, dig: Dig, earth: Earth, measuring: Measuring): void {
  const waste = trenchNumbers.stoneWasteShare.value;
  const sand = dig.bedding === 'sand';
  bill.add({
    code: sand ? 'bedding-sand' : dig.perforated ? 'drain-stone' : 'bedding-gravel',
    text: sand ? 'sand around the pipe' : dig.perforated ? 'washed drain stone' : 'gravel around the pipe',
    unit: 'm3',
    amount: earth.stoneM3 * (1 + waste),
    alongM: dig.lengthM,
    basis: `less the pipe, and ${waste * 100} % waste`,
    isMaterial: true,
  });
  if (dig.wrapped) {
    // a bought sock comes on the pipe where there is no stone to wrap
    const around = 2 * (earth.widthM + earth.stoneHeightM) + trenchNumbers.fabricOverlapM.value;
    bill.add({
      code: 'fabric',
      text: 'non-woven fabric around the stone',
      unit: 'm2',
      amount: earth.stoneHeightM > 0 ? around * dig.lengthM : 0,
      basis: `once round and ${acrossWords(trenchNumbers.fabricOverlapM.value, measuring.units)} over itself`,
      isMaterial: true,
    });
  }
  bill.add({
    code: 'backfill',
    text: 'dug soil put back and tamped in layers',
    unit: 'm3',
    amount: earth.filledM3,
  });
  bill.add({
    code: 'spoil-away',
    text: 'spare soil carted off, loose',
    unit: 'm3',
    amount: earth.leftM3 * (1 + measuring.swellShare),
    basis: `stone and pipe take its place; swells by ${Math.round(measuring.swellShare * 100)} %`,
  });
}

function addSurface(bill: Bill, dig: Dig, earth: Earth, measuring: Measuring): void {
  const torn = 2 * trenchNumbers.tornBesideM.value;
  if (dig.surface === 'paving') {
    bill.add({
      code: 'saw-cut',
      text: 'paving cut with a saw',
      unit: 'm',
      amount: 2 * dig.lengthM,
      basis: 'both sides of the trench',
    });
  }
  bill.add({
    code: `reinstate-${dig.surface}`,
    text: REINSTATE[dig.surface],
    unit: 'm2',
    amount: dig.lengthM * (earth.topWidthM + torn),
    basis: `top of the trench and ${acrossWords(torn / 2, measuring.units)} either side`,
  });
}

/** Adds what opening, filling and closing one dig takes. */
export function addDig(bill: Bill, dig: Dig, measuring: Measuring): void {
  if (dig.bored) {
    bill.add({ code: 'bore', text: 'bored under ground, nothing opened', unit: 'm', amount: dig.lengthM });
    bill.add({
      code: 'bore-pit',
      text: 'pit to bore from or to',
      unit: 'piece',
      amount: 2,
      basis: 'one at each end',
    });
  } else {
    const earth = earthOf(dig, measuring);
    addTrench(bill, dig, earth, measuring);
    addFill(bill, dig, earth, measuring);
    addSurface(bill, dig, earth, measuring);
  }
  bill.add({
    code: 'old-pipe-out',
    text: 'old pipe taken out and carted off',
    unit: 'm',
    amount: dig.oldPipeM,
  });
  bill.add({
    code: 'root-barrier',
    text: 'root barrier set in the trench',
    unit: 'm2',
    amount: dig.barrierM * dig.lengthM,
    basis: `${acrossWords(dig.barrierM, measuring.units)} high`,
    isMaterial: true,
  });
}
