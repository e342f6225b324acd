import type { Dig } from '../model/dig.js';
import type { FittingType } from '../model/site.js';
import { pipeRow } from '../tables/pipes.js';
import type { Bill } from './bill.js';
import type { Measuring } from './options.js';
import { pipePieces } from './pipe-pieces.js';
import { sizeWord } from './size-word.js';
import { alongWords, sizeWords } from './wording.js';

const FITTING_TEXT: Readonly<Record<FittingType, string>> = {
  wye: 'wye',
  tee: 'tee',
  bend: 'bend',
  coupling: 'coupling of new pipe to old',
  reducer: 'reducer',
  basin: 'access basin with grate, set on gravel, pipes sealed in',
  cleanout: 'cleanout with riser and cap',
  downspout: 'downspout adapter',
  outlet: 'outlet with grate',
  cap: 'cap',
};

/** Fittings at which a run of pipe ends and a new one begins. */
const ENDS_A_RUN: readonly FittingType[] = ['wye', 'tee', 'bend', 'coupling', 'reducer', 'basin', 'cleanout'];

/** `pipe-hdpe-corrugated-perforated-4in`: what a price list calls the pipe of a dig. */
function pipeCode({ pipe, perforated, sizeM }: Dig): string {
  return `pipe-${pipe}${perforated ? '-perforated' : ''}-${sizeWord(sizeM)}`;
}

const fittingsIn = (digs: readonly Dig[]): number =>
  digs
    .flatMap((dig) => dig.fittings)
    .filter(({ type }) => ENDS_A_RUN.includes(type))
    .reduce((sum, { count }) => sum + count, 0);

function addPipe(bill: Bill, digs: readonly Dig[], { pieceM, units }: Measuring): void {
  const [first] = digs;
  if (first === undefined || first.pipe === null) return;
  const lengthM = digs.reduce((sum, dig) => sum + dig.lengthM, 0);
  const runs = fittingsIn(digs) + 1;
  const bought = pipePieces(first.pipe, Array(runs).fill(lengthM / runs), pieceM);
  const kind = `${sizeWords(first.sizeM, units)} ${first.perforated ? 'perforated ' : ''}${pipeRow(first.pipe).name}`;
  const wasted = bought.wasteM > 0.005 ? `, ${alongWords(bought.wasteM, units)} cut off` : '';
  bill.add({
    code: pipeCode(first),
    text: kind,
    unit: 'm',
    amount: bought.boughtM,
    basis: bought.coil
      ? `${alongWords(lengthM, units)} off the coil`
      : `${bought.pieces} pieces of ${alongWords(bought.pieceM, units)} for ${alongWords(lengthM, units)}${wasted}`,
    isMaterial: true,
  });
  bill.add({
    code: `joint-coupling-${sizeWord(first.sizeM)}`,
    text: `coupling between pieces of ${kind}`,
    unit: 'piece',
    amount: bought.couplings,
    isMaterial: true,
  });
}

function addFittings(bill: Bill, dig: Dig, { units }: Measuring): void {
  for (const { type, count } of dig.fittings) {
    bill.add({
      code: type === 'basin' ? 'basin' : `${type}-${sizeWord(dig.sizeM)}`,
      text: type === 'basin' ? FITTING_TEXT.basin : `${sizeWords(dig.sizeM, units)} ${FITTING_TEXT[type]}`,
      unit: 'piece',
      amount: count,
      isMaterial: true,
    });
  }
}

/** Adds pipe, couplings, fittings and tape; pipe of one kind is bought together. */
export function addPipes(bill: Bill, digs: readonly Dig[], measuring: Measuring): void {
  const alike = new Map<string, Dig[]>();
  for (const dig of digs) {
    if (dig.pipe !== null) alike.set(pipeCode(dig), [...(alike.get(pipeCode(dig)) ?? []), dig]);
  }
  for (const group of alike.values()) addPipe(bill, group, measuring);
  for (const dig of digs) addFittings(bill, dig, measuring);
  if (!measuring.tape) return;
  const taped = digs.filter((dig) => dig.pipe !== null && !dig.bored);
  bill.add({
    code: 'warning-tape',
    text: 'warning tape with a wire to find it by',
    unit: 'm',
    amount: taped.reduce((sum, dig) => sum + dig.lengthM, 0),
    isMaterial: true,
  });
}
