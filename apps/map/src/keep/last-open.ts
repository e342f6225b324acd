const NAME = 'rootreach-site';

/** Storage may be missing or forbidden: then there is nothing to remember, and nothing else is wrong. */
function quietly<T>(act: () => T): T | null {
  try {
    return act();
  } catch {
    return null;
  }
}

/** The site that was open last: in this tab, else in any. */
export const lastOpen = {
  read: (): string | null =>
    quietly(() => sessionStorage.getItem(NAME)) ?? quietly(() => localStorage.getItem(NAME)),
  write(site: string): void {
    quietly(() => sessionStorage.setItem(NAME, site));
    quietly(() => localStorage.setItem(NAME, site));
  },
};
