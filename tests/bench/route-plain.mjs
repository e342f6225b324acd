import FlatQueue from 'flatqueue';

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
  const queue = new FlatQueue();
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
