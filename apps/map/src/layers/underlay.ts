import * as L from 'leaflet';
import { groundOfPixel, type Underlay } from '../draw/picture.js';
import { latLng } from './ground.js';

/** Under the grid, over tiles. */
const PANE = 'picture';
const Z_INDEX = '395';

/**
 * A picture under the plan: turned and scaled by a matrix through three of its corners, so that it lies on the
 * same ground as what is drawn over it. Returns what shows another picture, or none.
 */
export function layUnderlay(map: L.Map): (underlay: Underlay | null) => void {
  const pane = map.getPane(PANE) ?? map.createPane(PANE);
  pane.style.zIndex = Z_INDEX;
  pane.style.pointerEvents = 'none';
  const image = document.createElement('img');
  image.alt = '';
  image.className = 'underlay leaflet-zoom-animated';
  image.hidden = true;
  pane.append(image);
  let shown: Underlay | null = null;

  const lay = (pointOf: (at: L.LatLng) => L.Point) => {
    if (!shown) return;
    const { widthPx, heightPx } = shown;
    const at = (x: number, y: number) => pointOf(L.latLng(latLng(groundOfPixel(shown as Underlay, [x, y]))));
    const [from, right, down] = [at(0, 0), at(widthPx, 0), at(0, heightPx)];
    const matrix = [
      (right.x - from.x) / widthPx,
      (right.y - from.y) / widthPx,
      (down.x - from.x) / heightPx,
      (down.y - from.y) / heightPx,
      from.x,
      from.y,
    ];
    image.style.transform = `matrix(${matrix.join(',')})`;
  };
  const settle = () => {
    const { x, y } = map.getPixelOrigin();
    lay((at) => map.project(at).subtract([x, y]));
  };
  map.on('viewreset zoom zoomend', settle);
  map.on('zoomanim', (event) => {
    const { center, zoom } = event as L.ZoomAnimEvent;
    const half = map.getSize().divideBy(2);
    const origin = map.project(center, zoom).subtract(half);
    const paneAt = L.DomUtil.getPosition(map.getPanes().mapPane) ?? L.point(0, 0);
    lay((at) => map.project(at, zoom).subtract(origin).subtract(paneAt));
  });
  return (underlay) => {
    if (underlay && underlay.image !== shown?.image) {
      image.src = underlay.image;
      image.width = underlay.widthPx;
      image.height = underlay.heightPx;
    }
    shown = underlay;
    image.hidden = underlay === null;
    image.style.opacity = String(underlay?.opacity ?? 1);
    settle();
  };
}
