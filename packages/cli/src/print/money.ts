/** Signs of the money most lists are in; others are named. */
const SIGNS: Readonly<Record<string, string>> = { USD: '$', EUR: '€', GBP: '£' };

const grouped = (whole: string): string => whole.replace(/\B(?=(\d{3})+$)/g, ',');

/** `$2,578.34` of decimal text, or `2,578.34 SEK`. */
export function moneyText(amount: string, currency: string): string {
  const [whole = '0', cents] = amount.split('.');
  const text = cents === undefined ? grouped(whole) : `${grouped(whole)}.${cents}`;
  const sign = SIGNS[currency];
  return sign === undefined ? `${text} ${currency}` : `${sign}${text}`;
}

/** To the whole: what is weighed over years is no better known. */
export const wholeMoney = (amount: number, currency: string): string =>
  moneyText(amount.toFixed(0), currency);
