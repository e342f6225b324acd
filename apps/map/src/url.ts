import type { Units } from '@rootreach/core';

/** What of the state can be shared as an address. */
export interface Shared {
  /** Key of a bundled site; null for a file of the user's own. */
  readonly site: string | null;
  readonly stretch: string | null;
  readonly units: Units | null;
}

export function readHash(hash: string): Shared {
  const fields = new URLSearchParams(hash.replace(/^#/, ''));
  const units = fields.get('units');
  return {
    site: fields.get('site') || null,
    stretch: fields.get('stretch') || null,
    units: units === 'us' || units === 'metric' ? units : null,
  };
}

export function writeHash(shared: Shared): string {
  const fields = new URLSearchParams();
  for (const [name, value] of Object.entries(shared)) if (value !== null) fields.set(name, value);
  const text = fields.toString().replaceAll('%2F', '/');
  return text === '' ? '' : `#${text}`;
}
