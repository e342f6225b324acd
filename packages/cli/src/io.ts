/** The outside world as a command sees it, so that a test can stand in for it. */
export interface Io {
  readonly stdout: { write(text: string): void };
  readonly stderr: { write(text: string): void };
  /** All of standard input as text. */
  readonly stdin: () => Promise<string>;
  readonly now: Date;
  /** Width of the terminal; undefined where standard output is none. */
  readonly columns: number | undefined;
  /** True where standard output is a terminal. */
  readonly isTTY: boolean;
  readonly stderrIsTTY: boolean;
  /** True where type may be bold or dim. */
  readonly styled: boolean;
  /** Resolves when the person asks a running command to stop. */
  readonly stopped: () => Promise<void>;
}
