import { seeded } from '../scenes/seeded.js';

/** Choices that are the same for the same seed. */
export class Chance {
  constructor(private readonly next: () => number) {}

  happens(share: number): boolean {
    return this.next() < share;
  }

  /** A whole number from 0 to below `n`; 0 for none. */
  below(n: number): number {
    return Math.floor(this.next() * n);
  }

  pick<T>(list: readonly T[]): T {
    return list[this.below(list.length)] as T;
  }

  /** Few of anything are likelier than many: 1 to `most`. */
  few(most: number): number {
    return 1 + Math.floor(this.next() ** 2 * most);
  }
}

/** FNV-1a over the characters (Fowler, Noll & Vo), so that cases next to each other have nothing in common. */
function hashed(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash >>> 0;
}

/** The choices of one case, told from every other by seed, target and number. */
export const chanceOf = (seed: number, target: string, number: number): Chance =>
  new Chance(seeded(hashed(`${seed} ${target} ${number}`)));
