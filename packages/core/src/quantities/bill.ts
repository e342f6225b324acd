import type { Quantity, QuantityUnit } from '../model/quantity.js';
import type { Units } from '../model/site.js';
import { alongWords } from './wording.js';

interface Entry {
  readonly code: string;
  readonly text: string;
  readonly unit: QuantityUnit;
  readonly isMaterial: boolean;
  /** Kept apart from others of its code; '' where one line is enough. */
  readonly apart: string;
  amount: number;
  alongM: number;
  readonly basis: string[];
}

/** What is added to a bill at once. */
export interface Added {
  readonly code: string;
  readonly text: string;
  readonly unit: QuantityUnit;
  readonly amount: number;
  readonly basis?: string;
  /** Length that it is spread over, metres; added up and told in the basis. */
  readonly alongM?: number;
  readonly isMaterial?: boolean;
  readonly apart?: string;
}

/** A quantity list in the making: like is added to like, in the order in which things come up. */
export class Bill {
  private readonly entries = new Map<string, Entry>();

  constructor(private readonly units: Units) {}

  add({ code, text, unit, amount, basis, alongM = 0, isMaterial = false, apart = '' }: Added): void {
    if (!(amount > 1e-9)) return;
    const key = `${code} ${apart}`;
    const entry = this.entries.get(key) ?? {
      code,
      text,
      unit,
      isMaterial,
      apart,
      amount: 0,
      alongM: 0,
      basis: [],
    };
    entry.amount += amount;
    entry.alongM += alongM;
    if (basis !== undefined && !entry.basis.includes(basis)) entry.basis.push(basis);
    this.entries.set(key, entry);
  }

  lines(): Quantity[] {
    return [...this.entries.values()].map(({ code, text, unit, isMaterial, amount, alongM, basis }) => ({
      code,
      text,
      quantity: amount,
      unit,
      basis: [...(alongM > 0 ? [`${alongWords(alongM, this.units)} long`] : []), ...basis].join('; '),
      isMaterial,
    }));
  }
}
