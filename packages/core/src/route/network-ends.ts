import type { NetworkOutlet, NetworkSource } from '../model/network.js';
import type { Vertex } from './network-tree.js';

export const sourceVertex = ({ id, x, y, load, basin = false }: NetworkSource): Vertex => ({
  id,
  kind: 'source',
  x,
  y,
  load,
  basin,
  next: null,
});

export const outletVertices = (outlets: readonly NetworkOutlet[]): Vertex[] =>
  outlets.map(({ id, x, y }) => ({ id, kind: 'outlet', x, y, load: 0, basin: false, next: null }));
