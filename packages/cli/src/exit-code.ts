import type { Issue } from '@rootreach/core';
import type { ExitCode } from './command.js';

/** 1 where the input has errors or warnings, else 0. */
export function exitCodeFor(issues: readonly Issue[]): ExitCode {
  return issues.some(({ severity }) => severity !== 'notice') ? 1 : 0;
}
