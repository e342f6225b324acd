/** One call of the command: its words, and the files that it finds. A word that starts with `@/` is a path among them. */
export interface Case {
  readonly argv: readonly string[];
  readonly files: Readonly<Record<string, string | Uint8Array>>;
}
