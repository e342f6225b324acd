import { computed, signal } from '@preact/signals';
import { demoPrices, type PriceIssue, type PriceList, readPriceList, writePriceList } from '@rootreach/core';

const KEY = 'rootreach-prices';
const TERMS = 'rootreach-price-terms';

/** What this device remembers; nothing where it may not remember. */
function remembered(key: string): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

function remember(key: string, text: string | null): void {
  try {
    if (text === null) localStorage.removeItem(key);
    else localStorage.setItem(key, text);
  } catch {
    // a blocked or full store: the list holds until the page is closed
  }
}

function readTerms(): { readonly margin: number; readonly tax: number } {
  try {
    const { margin, tax } = JSON.parse(remembered(TERMS) ?? '{}') as { margin?: unknown; tax?: unknown };
    const share = (value: unknown) => (typeof value === 'number' && value >= 0 && value <= 1 ? value : 0);
    return { margin: share(margin), tax: share(tax) };
  } catch {
    return { margin: 0, tax: 0 };
  }
}

const text = signal<string | null>(remembered(KEY));
export const priceIssues = signal<readonly PriceIssue[]>([]);
/** Shares added on the sum. */
export const priceTerms = signal(readTerms());

/** The firm's own list, or the invented one. */
export const priceList = computed<PriceList>(() => {
  const read = text.value === null ? null : readPriceList(text.value);
  return read && read.list.rows.length > 0 ? read.list : demoPrices();
});

/** One price at least was changed or taken in. */
export const changedPrices = computed(() => text.value !== null);

export const ownPrices = computed(() => text.value !== null && !priceList.value.invented);

/** Takes a list in; false where there is no price in it. */
export function takePrices(csv: string): boolean {
  const { list, issues } = readPriceList(csv);
  priceIssues.value = issues;
  if (list.rows.length === 0) return false;
  text.value = csv;
  remember(KEY, csv);
  return true;
}

/** One price changed by hand; the list is then the user's own. */
export function setPrice(code: string, price: string): void {
  const list = priceList.value;
  const rows = list.rows.map((row) => (row.code === code ? { ...row, price } : row));
  takePrices(writePriceList({ ...list, rows }));
}

export function forgetPrices(): void {
  text.value = null;
  priceIssues.value = [];
  remember(KEY, null);
}

export function setTerms(terms: { readonly margin: number; readonly tax: number }): void {
  priceTerms.value = terms;
  remember(TERMS, JSON.stringify(terms));
}

export const priceFile = (): string => writePriceList(priceList.value);
