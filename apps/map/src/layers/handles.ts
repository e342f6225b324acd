import type { LonLat } from '@rootreach/core';
import * as L from 'leaflet';
import { latLng } from './ground.js';

/** Something on the plan that can be reached by Tab, and moved by finger, mouse or arrow keys. */
export interface Handle {
  readonly key: string;
  readonly at: LonLat;
  readonly className: string;
  readonly label: string;
  /** A number to be seen on it. */
  readonly badge?: string;
  readonly draggable: boolean;
  /** Where a drag has come to; returns where the handle goes instead, if it is drawn elsewhere. */
  readonly drag?: (to: LonLat) => void;
  readonly dragStart?: () => void;
  readonly dragEnd?: () => void;
  /** Tap, Enter or space. */
  readonly act: () => void;
  /** Other keys; true where it was taken. */
  readonly keyDown?: (event: KeyboardEvent) => boolean;
}

/** Room for a finger. */
const SIZE_PIXELS = 44;

interface Shown {
  readonly marker: L.Marker;
  now: Handle;
}

const place = ({ lat, lng }: L.LatLng): LonLat => [lng, lat];

function iconOf(className: string): L.DivIcon {
  return L.divIcon({ className: `handle-mark ${className}`, iconSize: [SIZE_PIXELS, SIZE_PIXELS] });
}

function listen(shown: Shown, element: HTMLElement): void {
  element.setAttribute('role', 'button');
  element.addEventListener('keydown', (event) => {
    const isAct = event.key === 'Enter' || event.key === ' ';
    if (isAct) shown.now.act();
    if (!isAct && !shown.now.keyDown?.(event)) return;
    event.preventDefault();
    event.stopPropagation();
  });
  // Leaflet makes a click of Enter by itself; it was taken above.
  element.addEventListener('keypress', (event) => event.stopPropagation());
}

/**
 * Handles that follow a list: what stays in it keeps its element, so that neither a drag nor the focus is lost
 * while the sketch changes under it. Returns what shows another list.
 */
export function layHandles(map: L.Map, pane: string): (handles: readonly Handle[]) => void {
  const all = new Map<string, Shown>();
  let dragging: string | null = null;

  const make = (handle: Handle): Shown => {
    const { className, draggable } = handle;
    const marker = L.marker(latLng(handle.at), {
      icon: iconOf(className),
      pane,
      draggable,
      autoPan: draggable,
      keyboard: true,
      bubblingMouseEvents: false,
    });
    const shown: Shown = { marker, now: handle };
    marker.on('click', (event) => {
      // Enter and space come by the key handler.
      if (event.originalEvent instanceof KeyboardEvent) return;
      shown.now.act();
    });
    marker.on('dragstart', () => {
      dragging = handle.key;
      shown.now.dragStart?.();
    });
    marker.on('drag', () => shown.now.drag?.(place(marker.getLatLng())));
    marker.on('dragend', () => {
      dragging = null;
      shown.now.dragEnd?.();
      marker.setLatLng(latLng(shown.now.at));
    });
    marker.addTo(map);
    const element = marker.getElement();
    if (element) {
      element.dataset['handle'] = handle.key;
      listen(shown, element);
    }
    return shown;
  };

  return (handles) => {
    const wanted = new Map(handles.map((handle) => [handle.key, handle]));
    for (const [key, { marker }] of all) {
      if (wanted.has(key)) continue;
      marker.remove();
      all.delete(key);
    }
    for (const handle of handles) {
      let shown = all.get(handle.key);
      if (shown && (shown.now.className !== handle.className || shown.now.draggable !== handle.draggable)) {
        shown.marker.remove();
        shown = undefined;
      }
      shown ??= make(handle);
      shown.now = handle;
      all.set(handle.key, shown);
      if (dragging !== handle.key) shown.marker.setLatLng(latLng(handle.at));
      const element = shown.marker.getElement();
      element?.setAttribute('aria-label', handle.label);
      if (element) element.dataset['badge'] = handle.badge ?? '';
    }
  };
}
