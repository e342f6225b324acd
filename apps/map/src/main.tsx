import { effect } from '@preact/signals';
import { options, render } from 'preact';
import { afterFrame } from './after-frame.js';
import { isDemo } from './demos.js';
import { tightenPictures } from './draw/tile-address.js';
import { engineInWorker } from './engine.js';
import { followLarge } from './follow-large.js';
import type { Desk } from './keep/desk.js';
import { listenToKeys } from './keep/keys.js';
import { stayOffline } from './keep/offline.js';
import { openLast, startKeeping } from './keep/start-keeping.js';
import { Page } from './panels/page.js';
import { followSketch } from './rescore.js';
import * as state from './state.js';
import './style.css';
import { readHash, writeHash } from './url.js';
import { startSpeaking, words } from './words/words.js';

const WIDE = '(min-width: 900px)';

function follow(query: string, set: (matches: boolean) => void): void {
  const media = matchMedia(query);
  media.addEventListener('change', () => set(media.matches));
  set(media.matches);
}

function followWindow(): void {
  follow(WIDE, (matches) => {
    state.wide.value = matches;
    state.keyOpen.value = matches;
  });
  follow('(prefers-color-scheme: dark)', (matches) => {
    state.dark.value = matches;
  });
  const measure = () => {
    state.pageHeight.value = window.innerHeight;
  };
  window.addEventListener('resize', measure);
  measure();
}

/** What a server that hands the page over says of itself in the page's head. */
const toldByServer = (name: string): string =>
  document.querySelector<HTMLMetaElement>(`meta[name="rootreach-${name}"]`)?.content ?? '';

/** Files handed over come first, then a demo the address names, then the site that was open last. */
async function openFirst(desk: Desk): Promise<void> {
  const { site, stretch } = readHash(location.hash);
  const begun = desk.sites.begin();
  if (await desk.opener.openServed(toldByServer('opened'), stretch)) return;
  if (isDemo(site)) {
    await desk.opener.openDemo(site, stretch);
    return;
  }
  await begun;
  if (!(await openLast(desk))) await desk.opener.openDemo('corner-lot', stretch);
}

const nextTask = () => new Promise((go) => setTimeout(go));

async function start(): Promise<void> {
  tightenPictures();
  followWindow();
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  const engine = engineInWorker(worker);
  const desk = startKeeping(engine);
  followSketch(engine);
  followLarge(engine);
  await startSpeaking();
  state.switchedUnits.value = readHash(location.hash).units;
  await nextTask();
  const page = document.getElementById('page');
  page?.replaceChildren();
  if (page) render(<Page opener={desk.opener} />, page);
  listenToKeys();
  // of the first site the plan comes first, and the panels in a task of their own
  options.debounceRendering = (draw) => void afterFrame().then(draw);
  await openFirst(desk);
  effect(() => {
    history.replaceState(null, '', writeHash(state.shared.value) || location.pathname + location.search);
  });
  effect(() => {
    document.title = words.value.title(state.opened.value?.result.site.name ?? null);
  });
  window.addEventListener('hashchange', () => {
    const { site, stretch, units } = readHash(location.hash);
    state.switchedUnits.value = units;
    if (isDemo(site) && site !== state.siteKey.value) void desk.opener.openDemo(site, stretch);
    else state.chooseStretch(stretch !== null && state.segmentById.value.has(stretch) ? stretch : null);
  });
  await afterFrame();
  delete options.debounceRendering;
  if (toldByServer('offline') === 'keep') stayOffline(desk.keeper.flush);
}

void start();
