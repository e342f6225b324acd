/** A site that this tab alone may save. */
export interface Hold {
  readonly release: () => void;
}

export interface SiteLocks {
  /** Null where another tab has the site. `onLost` is called if another tab takes it over. */
  hold(site: string, onLost: () => void): Promise<Hold | null>;
  /** Waits a moment for the other tab to let go, then takes the site in any case. */
  takeOver(site: string, onLost: () => void): Promise<Hold>;
}

/** How long the other tab may take to save and let go; one that sleeps in the background never answers. */
const PATIENCE_MS = 1500;
/** A page that is loaded again may find its own lock from before not yet gone. */
const GRACE_MS = 2000;
const nameOf = (site: string) => `rootreach-site-${site}`;

function ask(locks: LockManager, site: string, options: LockOptions, onLost: () => void): Promise<Hold> {
  return new Promise((answer, fail) => {
    let held = false;
    let released = false;
    const keepUntilReleased = () =>
      new Promise<void>((done) => {
        held = true;
        const release = () => {
          released = true;
          done();
        };
        answer({ release });
      });
    locks.request(nameOf(site), options, keepUntilReleased).catch((error: unknown) => {
      if (!held) fail(error);
      else if (!released) onLost();
    });
  });
}

/** Null where it is not let go within that time. */
async function waitFor(
  locks: LockManager,
  site: string,
  patienceMs: number,
  onLost: () => void,
): Promise<Hold | null> {
  const signal = AbortSignal.timeout(patienceMs);
  try {
    return await ask(locks, site, { signal }, onLost);
  } catch (error) {
    if (signal.aborted) return null;
    throw error;
  }
}

/** One tab holds a site by a Web Lock. */
export function webLocks(locks: LockManager): SiteLocks {
  return {
    hold: (site, onLost) => waitFor(locks, site, GRACE_MS, onLost),
    async takeOver(site, onLost) {
      const waited = await waitFor(locks, site, PATIENCE_MS, onLost);
      return waited ?? ask(locks, site, { steal: true }, onLost);
    },
  };
}

/** Where there are no locks, the revision in the store still keeps one tab from writing over another. */
export const noLocks: SiteLocks = {
  hold: async () => ({ release: () => undefined }),
  takeOver: async () => ({ release: () => undefined }),
};
