import { type PriceIssue, wordPriceIssue } from '@rootreach/core';
import type { Io } from '../io.js';
import { count } from './count.js';
import { printable } from './printable.js';

/** What is wrong with a price list, on stderr, every line of it: a price that is missed costs money. */
export function reportPriceIssues(issues: readonly PriceIssue[], file: string, io: Io): void {
  if (issues.length === 0) return;
  const lines = issues.map((issue) => `  ${file}, line ${issue.line}: ${wordPriceIssue(issue)}`);
  io.stderr.write(
    `${[`In the price list: ${count(issues.length, 'fault')}.`, ...lines].map(printable).join('\n')}\n`,
  );
}
