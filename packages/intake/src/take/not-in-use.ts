/** Words by which pipe files mark what is no longer, or not yet, in the ground and in use. */
const NOT_IN_USE =
  /\b(?:abandon\w*|removed|retired|decommission\w*|proposed|planned|design|future|aban|abd|inactive|stillgelegt|geplant)\b/i;

/** Whether a pipe's status says that no water runs in it. */
export const isNotInUse = (status: string): boolean => NOT_IN_USE.test(status);
