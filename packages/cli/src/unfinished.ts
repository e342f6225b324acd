import { randomUUID } from 'node:crypto';
import { rmSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';

const SIGNALS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/** Files being written under a name beside their own; they are gone again when the command is stopped. */
export class Unfinished {
  private readonly paths = new Set<string>();

  constructor() {
    for (const signal of SIGNALS) process.once(signal, this.stop);
  }

  private readonly stop = (signal: NodeJS.Signals): void => {
    this.clear();
    // nobody else listens now: the process ends as it would have without us
    process.kill(process.pid, signal);
  };

  /** Where a file is written until it is whole. */
  beside(path: string): string {
    // a number of the process would come again: one that was killed leaves its part behind
    const beside = join(dirname(path), `.${basename(path).slice(0, 40)}.${randomUUID()}.part`);
    this.paths.add(beside);
    return beside;
  }

  /** Removes what was not renamed. */
  clear(): void {
    for (const signal of SIGNALS) process.off(signal, this.stop);
    for (const path of this.paths) rmSync(path, { force: true });
    this.paths.clear();
  }
}
