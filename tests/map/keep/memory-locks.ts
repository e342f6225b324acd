import type { SiteLocks } from '../../../apps/map/src/keep/site-lock.js';

/** Locks of tabs that live in one test. */
export function memoryLocks(): SiteLocks {
  const holders = new Map<string, () => void>();
  const take = (site: string, onLost: () => void) => {
    holders.set(site, onLost);
    return {
      release: () => {
        if (holders.get(site) === onLost) holders.delete(site);
      },
    };
  };
  return {
    hold: async (site, onLost) => (holders.has(site) ? null : take(site, onLost)),
    takeOver: async (site, onLost) => {
      holders.get(site)?.();
      return take(site, onLost);
    },
  };
}
