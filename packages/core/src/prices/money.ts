import Big from 'big.js';

/** Half up, as a cash register does it. */
const HALF_UP = Big.roundHalfUp;
const PLACES = 2;

/** A quantity as it is charged: two places. Twelve digits first, so that a binary hair decides nothing. */
export const chargedQuantity = (quantity: number): Big =>
  new Big(quantity.toPrecision(12)).round(PLACES, HALF_UP);

/** To the cent. */
export const toCent = (amount: Big): Big => amount.round(PLACES, HALF_UP);

/** `1234.50`. */
export const moneyText = (amount: Big): string => amount.toFixed(PLACES);

/** Sum of amounts of money that stand as text. */
export const sumOf = (amounts: readonly string[]): Big =>
  amounts.reduce((sum, amount) => sum.plus(amount), new Big(0));

/** A share such as 0.15 of an amount, to the cent. */
export const shareOf = (amount: Big, share: number): Big => toCent(amount.times(String(share)));

export const money = (text: string): Big => new Big(text);
