import type { Io } from './io.js';

/** Work that has lasted this long deserves a word, milliseconds. */
const PATIENCE_MS = 1000;
/** Features a second that reading and scoring get through on a modest machine; measured, on the low side. */
const FEATURES_PER_SECOND = 20_000;

/** Says on a terminal what is being done, where it takes more than a second. */
export class Progress {
  private readonly started = performance.now();

  constructor(private readonly io: Io) {}

  /** @param features how many the next step has to work through: what takes long is announced beforehand. */
  step(doing: string, features: number): void {
    const passed = performance.now() - this.started;
    const ahead = (features / FEATURES_PER_SECOND) * 1000;
    if (this.io.stderrIsTTY && passed + ahead > PATIENCE_MS) this.io.stderr.write(`${doing} ...\n`);
  }
}
