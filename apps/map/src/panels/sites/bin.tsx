import { signal } from '@preact/signals';
import { desk } from '../../keep/desk.js';
import * as keep from '../../keep/keep-state.js';
import type { KeptSite } from '../../keep/kept-site.js';
import { words } from '../../words/words.js';

const w = () => words.value.keep.panel;

const lastRemoved = signal<KeptSite | null>(null);

/** Deletes a site and says so, with a way back. */
export async function removeSite(site: KeptSite): Promise<void> {
  await desk().sites.remove(site);
  lastRemoved.value = site;
}

async function bringBack(site: KeptSite): Promise<void> {
  await desk().sites.restore(site);
  lastRemoved.value = null;
}

function BringBack({ site }: { readonly site: KeptSite }) {
  return (
    <button type="button" class="button" onClick={() => void bringBack(site)}>
      {w().restore}
    </button>
  );
}

export function LastRemoved() {
  const site = lastRemoved.value;
  return (
    <div role="status">
      {site && (
        <p class="removed">
          <span>{w().removed(site.name)}</span>
          <BringBack site={site} />
        </p>
      )}
    </div>
  );
}

/** Sites deleted lately: each can be brought back. */
export function Bin() {
  const removed = (keep.keptSites.value ?? []).filter((site) => site.deleted !== null);
  if (removed.length === 0) return null;
  return (
    <details class="fold bin">
      <summary>{w().bin(removed.length)}</summary>
      <ul>
        {removed.map((site) => (
          <li key={site.id} class="removed">
            <span>{site.name}</span>
            <BringBack site={site} />
          </li>
        ))}
      </ul>
    </details>
  );
}
