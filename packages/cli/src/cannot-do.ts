/** Something asked for cannot be done; the message is for the person at the keyboard. Ends with exit code 2. */
export class CannotDo extends Error {}
