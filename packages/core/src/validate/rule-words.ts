import type { z } from 'zod';

/** What a schema expects where something else stands: `a number`, `at least 0`. */
export function ruleWords(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return `a ${issue.expected}`;
    case 'invalid_value':
      return `one of ${issue.values.join(', ')}`;
    case 'too_small':
      return issue.inclusive === false ? `more than ${issue.minimum}` : `at least ${issue.minimum}`;
    case 'too_big':
      return `at most ${issue.maximum}`;
    case 'invalid_union':
      return 'a text or a number of another form';
    default:
      return issue.message;
  }
}
