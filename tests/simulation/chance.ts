import { seeded } from '../scenes/seeded.js';

/** A seeded stream of numbers from the distributions that a simulated town needs. */
export class Chance {
  readonly uniform: () => number;

  constructor(seed: number) {
    this.uniform = seeded(seed);
  }

  between(least: number, most: number): number {
    return least + (most - least) * this.uniform();
  }

  whole(least: number, most: number): number {
    return Math.floor(this.between(least, most + 1));
  }

  one<T>(of: readonly T[]): T {
    return of[Math.floor(this.uniform() * of.length)] as T;
  }

  /** Box & Muller (1958). */
  normal(): number {
    return Math.sqrt(-2 * Math.log(1 - this.uniform())) * Math.cos(2 * Math.PI * this.uniform());
  }

  /** Multiplication of uniforms (Knuth 1969), in parts so that a large mean does not underflow. */
  poisson(mean: number): number {
    if (mean > 30) return this.poisson(mean / 2) + this.poisson(mean / 2);
    const limit = Math.exp(-mean);
    let product = this.uniform();
    let n = 0;
    while (product > limit) {
      product *= this.uniform();
      n++;
    }
    return n;
  }

  /** Gamma with mean 1, for shapes from 1 on (Marsaglia & Tsang 2000). */
  gamma(shape: number): number {
    const d = shape - 1 / 3;
    for (;;) {
      const x = this.normal();
      const v = (1 + x / Math.sqrt(9 * d)) ** 3;
      if (v > 0 && Math.log(1 - this.uniform()) < (x * x) / 2 + d * (1 - v + Math.log(v)))
        return (d * v) / shape;
    }
  }
}
