import type { Args } from './args.js';
import type { Io } from './io.js';

/** 0: done; 1: done, but the input has errors or warnings; 2: could not do it. */
export type ExitCode = 0 | 1 | 2;

/** One option of a command. */
export interface OptionSpec {
  /** Name of its value in the help, or null for a switch. */
  readonly value: string | null;
  readonly text: string;
  /** True where it may be given more than once. */
  readonly many?: true;
}

export type OptionSpecs = Readonly<Record<string, OptionSpec>>;

/** A command: what it says of itself, and what it does. */
export interface Command {
  readonly summary: string;
  readonly usage: string;
  readonly examples: readonly string[];
  readonly options: OptionSpecs;
  /** What its files are, where they are not all read together as one site. */
  readonly files?: string;
  readonly run: (args: Args, io: Io) => Promise<ExitCode>;
}
