import { effect } from '@preact/signals';
import { render } from 'preact';
import { isDemo } from './demos.js';
import { engineInWorker } from './engine.js';
import { opener } from './open.js';
import { Page } from './panels/page.js';
import { followSketch } from './rescore.js';
import * as state from './state.js';
import './style.css';
import { readHash, writeHash } from './url.js';
import { words } from './words/words.js';

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

async function start(): Promise<void> {
  followWindow();
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  const engine = engineInWorker(worker);
  const open = opener(engine);
  followSketch(engine);
  const first = readHash(location.hash);
  state.switchedUnits.value = first.units;
  const page = document.getElementById('page');
  if (page) render(<Page opener={open} />, page);
  const served = document.querySelector<HTMLMetaElement>('meta[name="rootreach-opened"]')?.content ?? '';
  if (!(await open.openServed(served, first.stretch))) {
    await open.openDemo(isDemo(first.site) ? first.site : 'corner-lot', first.stretch);
  }
  effect(() => {
    history.replaceState(null, '', writeHash(state.shared.value) || location.pathname + location.search);
  });
  effect(() => {
    document.title = words.value.title(state.opened.value?.result.site.name ?? null);
  });
  window.addEventListener('hashchange', () => {
    const { site, stretch, units } = readHash(location.hash);
    state.switchedUnits.value = units;
    if (isDemo(site) && site !== state.siteKey.value) void open.openDemo(site, stretch);
    else state.chooseStretch(stretch !== null && state.segmentById.value.has(stretch) ? stretch : null);
  });
}

void start();
