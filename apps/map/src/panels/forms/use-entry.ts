import { useEffect, useRef } from 'preact/hooks';
import type { Change } from '../../sketch/changes.js';
import * as sketch from '../../sketch/sketch.js';

/** Typing in one field: every understood keystroke is in the sketch at once, the whole entry is one step back. */
export function useEntry(label: string) {
  const move = useRef<ReturnType<typeof sketch.startMove> | null>(null);
  const done = () => {
    move.current?.done();
    move.current = null;
  };
  useEffect(() => done, []);
  return {
    write(change: Change): void {
      move.current ??= sketch.startMove(label);
      move.current.move(change);
    },
    done,
    cancel(): void {
      move.current?.cancel();
      move.current = null;
    },
  };
}
