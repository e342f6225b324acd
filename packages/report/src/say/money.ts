const SIGNS: Readonly<Record<string, string>> = { USD: '$', EUR: '€', GBP: '£' };

/** An estimate in whole units of money, rounded to tens from a thousand up: `$1,240`, `CHF 900`. */
export function moneySaid(amount: number, currency: string): string {
  const rounded = amount >= 1000 ? Math.round(amount / 10) * 10 : Math.round(amount);
  const digits = String(rounded).replace(/\B(?=(\d{3})+$)/g, ',');
  const sign = SIGNS[currency];
  return sign === undefined ? `${currency} ${digits}` : `${sign}${digits}`;
}
