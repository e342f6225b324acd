import type { WhyUnsaved } from './keep-state.js';

/** Names of what IndexedDB throws where the browser does not let the page keep anything. */
const BLOCKED = ['SecurityError', 'InvalidStateError', 'NotAllowedError', 'TypeError', 'UnknownError'];

/** What a failed save means for the user. */
export function whyUnsaved(error: unknown): WhyUnsaved {
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  if (name === 'QuotaExceededError') return 'full';
  return BLOCKED.includes(name) ? 'blocked' : 'broken';
}
