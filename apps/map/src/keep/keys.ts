import * as sketch from '../sketch/sketch.js';
import { desk } from './desk.js';

/** In a field these keys belong to what is being typed. */
const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.matches('input:not([type=radio], [type=checkbox]), textarea');

function actionOf(event: KeyboardEvent): (() => void) | null {
  if (event.altKey || !(event.ctrlKey || event.metaKey)) return null;
  const key = event.key.toLowerCase();
  if (key === 's' && !event.shiftKey) return () => desk().sites.saveOpenAsFile();
  if (isTyping(event.target)) return null;
  if (key === 'z') return event.shiftKey ? sketch.redo : sketch.undo;
  return key === 'y' && !event.shiftKey ? sketch.redo : null;
}

/** Undo, redo and save as a file by the usual keys. Returns the stop. */
export function listenToKeys(): () => void {
  const onKey = (event: KeyboardEvent) => {
    const act = actionOf(event);
    if (!act) return;
    event.preventDefault();
    act();
  };
  window.addEventListener('keydown', onKey);
  return () => window.removeEventListener('keydown', onKey);
}
