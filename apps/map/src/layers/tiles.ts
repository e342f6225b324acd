import * as L from 'leaflet';
import type { TileAddress } from '../draw/tile-address.js';

const PANE = 'tiles';
const Z_INDEX = '390';
/** Closer than this, most servers have no pictures of their own; theirs are drawn larger. */
const MOST_OWN_ZOOM = 19;

/** Pictures from the server that the user named, under everything else. */
export function layTiles(map: L.Map, { address }: TileAddress): void {
  const pane = map.getPane(PANE) ?? map.createPane(PANE);
  pane.style.zIndex = Z_INDEX;
  pane.style.pointerEvents = 'none';
  L.tileLayer(address, {
    pane: PANE,
    maxZoom: map.getMaxZoom(),
    maxNativeZoom: MOST_OWN_ZOOM,
    referrerPolicy: 'no-referrer',
    opacity: 0.75,
  } as L.TileLayerOptions).addTo(map);
}
