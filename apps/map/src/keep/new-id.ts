/** A name that nothing else has. Made by hand, since browsers offer theirs on secure addresses only. */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
