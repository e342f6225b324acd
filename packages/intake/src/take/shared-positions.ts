/** Positions of a file, kept as bare numbers, to tell at the end how many stand on one another. */
export class SharedPositions {
  private lon = new Float64Array(1024);
  private lat = new Float64Array(1024);
  private size = 0;

  add(lon: number, lat: number): void {
    if (this.size === this.lon.length) {
      const [lonBefore, latBefore] = [this.lon, this.lat];
      this.lon = new Float64Array(2 * this.size);
      this.lat = new Float64Array(2 * this.size);
      this.lon.set(lonBefore);
      this.lat.set(latBefore);
    }
    this.lon[this.size] = lon;
    this.lat[this.size] = lat;
    this.size += 1;
  }

  /** Number of points that share their position with another, and a few such positions. */
  shared(): { readonly count: number; readonly examples: readonly string[] } {
    const order = Uint32Array.from({ length: this.size }, (_, i) => i);
    const { lon, lat } = this;
    order.sort((a, b) => (lon[a] as number) - (lon[b] as number) || (lat[a] as number) - (lat[b] as number));
    const same = (a: number, b: number) => lon[a] === lon[b] && lat[a] === lat[b];
    let count = 0;
    const examples: string[] = [];
    for (let from = 0; from < order.length; ) {
      let to = from + 1;
      while (to < order.length && same(order[from] as number, order[to] as number)) to += 1;
      if (to - from > 1) {
        count += to - from;
        const at = order[from] as number;
        if (examples.length < 3) examples.push(`${to - from} at ${lon[at]}, ${lat[at]}`);
      }
      from = to;
    }
    return { count, examples };
  }
}
