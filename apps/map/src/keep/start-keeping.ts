import { effect } from '@preact/signals';
import type { Engine } from '../engine.js';
import { opener } from '../open.js';
import { database } from './database.js';
import { type Desk, setDesk } from './desk.js';
import * as keep from './keep-state.js';
import { type Keeper, keeper } from './keeper.js';
import { lastOpen } from './last-open.js';

import { shelf } from './shelf.js';
import { siteActions } from './site-actions.js';
import { noLocks, webLocks } from './site-lock.js';
import { isSiteText } from './site-text.js';

type Message = { readonly say: 'let-go'; readonly site: string } | { readonly say: 'list-changed' };

const now = () => new Date().toISOString();

/** Asks the browser once, after the first own edit, not to clear the store when the device runs low. */
function askToPersist(): () => void {
  let asked = false;
  return () => {
    if (asked) return;
    asked = true;
    void navigator.storage?.persist?.().catch(() => false);
  };
}

function watchLeaving({ flush, putDown, hasUnsaved }: Keeper): void {
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') void flush();
  });
  window.addEventListener('pagehide', () => putDown());
  window.addEventListener('beforeunload', (event) => {
    if (keep.unsaved.value && hasUnsaved()) event.preventDefault();
  });
}

/** Sets up the keeping of sites on this device and the opening of files. */
export function startKeeping(engine: Engine): Desk {
  const kept = shelf(
    database(() => indexedDB),
    isSiteText,
    now,
  );
  const channel = 'BroadcastChannel' in window ? new BroadcastChannel('rootreach-sites') : null;
  const say = (message: Message) => channel?.postMessage(message);
  const persist = askToPersist();
  const sites = siteActions(
    kept,
    () => keeping,
    () => open,
    () => say({ say: 'list-changed' }),
  );
  const open = opener(engine, sites.twinOf);
  const keeping: Keeper = keeper({
    shelf: kept,
    locks: 'locks' in navigator ? webLocks(navigator.locks) : noLocks,
    askToLetGo: (site) => say({ say: 'let-go', site }),
    openKept: async (site) => {
      await sites.open(site);
    },
    saved: () => {
      persist();
      say({ say: 'list-changed' });
      void sites.refresh();
    },
    now,
  });
  if (channel) {
    channel.onmessage = ({ data }: MessageEvent<Message>) => {
      if (data.say === 'let-go') void keeping.letGo(data.site);
      else void sites.refresh();
    };
  }
  keeping.start();
  effect(() => {
    if (keep.keptId.value !== null) lastOpen.write(keep.keptId.value);
  });
  watchLeaving(keeping);
  const desk = { opener: open, keeper: keeping, sites };
  setDesk(desk);
  return desk;
}

/** Opens the site that was open last, else the last changed; false where there is none. */
export async function openLast({ sites }: Desk): Promise<boolean> {
  const there = (keep.keptSites.value ?? []).filter((site) => site.deleted === null);
  const last = there.find((site) => site.id === lastOpen.read()) ?? there[0];
  return last !== undefined && (await sites.open(last.id));
}
