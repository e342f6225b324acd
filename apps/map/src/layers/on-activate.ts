import * as L from 'leaflet';

/** Makes a drawn shape answer to click, Enter and space. */
export function onActivate(path: L.Path, act: () => void): void {
  path.on('click', (event) => {
    L.DomEvent.stopPropagation(event);
    act();
  });
  const element = path.getElement() as SVGElement | undefined;
  if (!element) return;
  element.setAttribute('role', 'button');
  element.addEventListener('keydown', (event) => {
    if (event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    event.stopPropagation();
    act();
  });
}
