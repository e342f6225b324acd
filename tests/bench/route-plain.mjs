/** A binary heap of nodes by their price, in two plain arrays. */
class Heap {
  ids = [];
  prices = [];

  get length() {
    return this.ids.length;
  }

  push(id, price) {
    let at = this.ids.length;
    while (at > 0) {
      const up = (at - 1) >> 1;
      if (this.prices[up] <= price) break;
      this.ids[at] = this.ids[up];
      this.prices[at] = this.prices[up];
      at = up;
    }
    this.ids[at] = id;
    this.prices[at] = price;
  }

  pop() {
    const top = this.ids[0];
    const id = this.ids.pop();
    const price = this.prices.pop();
    const count = this.ids.length;
    if (count === 0) return top;
    let at = 0;
    for (;;) {
      let down = 2 * at + 1;
      if (down >= count) break;
      if (down + 1 < count && this.prices[down + 1] < this.prices[down]) down++;
      if (this.prices[down] >= price) break;
      this.ids[at] = this.ids[down];
      this.prices[at] = this.prices[down];
      at = down;
    }
    this.ids[at] = id;
    this.prices[at] = price;
    return top;
  }
}

const NEIGHBOURS = [-1, 0, 1].flatMap((dx) => [-1, 0, 1].map((dy) => [dx, dy])).filter(([x, y]) => x || y);

/**
 * Plain A* over the 8 neighbours of each node, a step at the mean of its two nodes: what a route search usually is.
 * The field's own prices and its mask are used, from node to node.
 */
export function plainAStar(field, from, to) {
  const { grid, perM, blocked, leastPerM } = field;
  const { x0, y0, cellM, columns, rows } = grid;
  const nodeAt = ([x, y]) => Math.round((y - y0) / cellM) * columns + Math.round((x - x0) / cellM);
  const wide = 2 * columns - 1;
  const start = nodeAt(from);
  const goal = nodeAt(to);
  const [gx, gy] = [goal % columns, Math.floor(goal / columns)];
  const cost = new Float64Array(perM.length).fill(Infinity);
  const before = new Int32Array(perM.length).fill(-1);
  const queue = new Heap();
  cost[start] = 0;
  queue.push(start, 0);
  while (queue.length > 0) {
    const node = queue.pop();
    if (node === goal) break;
    const i = node % columns;
    const k = (node - i) / columns;
    for (const [dx, dy] of NEIGHBOURS) {
      const [x, y] = [i + dx, k + dy];
      if (x < 0 || y < 0 || x >= columns || y >= rows) continue;
      if (blocked[2 * y * wide + 2 * x] || blocked[(2 * k + dy) * wide + 2 * i + dx]) continue;
      const next = y * columns + x;
      const at = cost[node] + ((perM[node] + perM[next]) / 2) * Math.hypot(dx, dy) * cellM;
      if (at >= cost[next]) continue;
      cost[next] = at;
      before[next] = node;
      queue.push(next, at + leastPerM * cellM * Math.hypot(gx - x, gy - y));
    }
  }
  const points = [];
  for (let at = goal; at >= 0; at = before[at]) {
    points.push([x0 + (at % columns) * cellM, y0 + Math.floor(at / columns) * cellM]);
  }
  return points.reverse();
}
