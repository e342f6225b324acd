/**
 * A list whose items are made when they are looked at: a town's trees are numbers in columns, and few of them are
 * ever spoken of. Behaves as a frozen array; only the item looked at last is kept.
 */
export function lazyList<T>(length: number, make: (index: number) => T): readonly T[] {
  let last = -1;
  let item: T | undefined;
  const at = (index: number): T | undefined => {
    if (index < 0 || index >= length) return undefined;
    if (index !== last) {
      item = make(index);
      last = index;
    }
    return item;
  };
  return new Proxy<T[]>([], {
    get(target, key) {
      if (key === 'length') return length;
      if (typeof key === 'string') {
        const index = Number(key);
        if (Number.isInteger(index)) return at(index);
      }
      return Reflect.get(target, key) as unknown;
    },
    has: (target, key) => {
      const index = typeof key === 'string' ? Number(key) : Number.NaN;
      return Number.isInteger(index) ? index >= 0 && index < length : Reflect.has(target, key);
    },
    set: () => false,
  });
}
