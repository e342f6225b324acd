import { useRef } from 'preact/hooks';
import type { Underlay } from '../../draw/picture.js';
import { setInfo } from '../../sketch/changes.js';
import * as sketch from '../../sketch/sketch.js';

interface PictureSliderProps {
  readonly label: string;
  readonly step: {
    readonly name: string;
    readonly low: number;
    readonly high: number;
    readonly by: number;
  };
  readonly value: number;
  readonly next: (value: number) => Underlay;
}

/** One pull of a slider is one step of history. */
export function PictureSlider({ label, step, value, next }: PictureSliderProps) {
  const move = useRef<ReturnType<typeof sketch.startMove> | null>(null);
  return (
    <label class="slider">
      <span>{label}</span>
      <input
        type="range"
        min={step.low}
        max={step.high}
        step={step.by}
        value={value}
        onInput={(event) => {
          move.current ??= sketch.startMove(step.name);
          move.current.move(setInfo({ underlay: next(Number(event.currentTarget.value)) }));
        }}
        onChange={() => {
          move.current?.done();
          move.current = null;
        }}
      />
    </label>
  );
}
