import { demoPrices, type PriceIssue, type PriceList, readPriceList } from '@rootreach/core';
import type { Args } from './args.js';
import { CannotDo } from './cannot-do.js';
import type { OptionSpecs } from './command.js';
import type { Io } from './io.js';
import { readInputs } from './read-inputs.js';

/** Option of commands that price. */
export const pricesOption: OptionSpecs = {
  prices: { value: 'FILE', text: "your own price list as CSV; 'demo' takes the invented one" },
};

export interface GivenPrices {
  readonly list: PriceList;
  readonly issues: readonly PriceIssue[];
}

/** The price list asked for; null where none was. */
export async function pricesFrom(args: Args, io: Io): Promise<GivenPrices | null> {
  const path = args.text('prices');
  if (path === undefined) return null;
  if (path === 'demo') return { list: demoPrices(), issues: [] };
  const [input] = await readInputs([path], io);
  const read = readPriceList(input?.text ?? '');
  if (read.list.rows.length === 0) throw new CannotDo(`there is no price to use in ${path}`);
  return read;
}
