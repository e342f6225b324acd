import { effect } from '@preact/signals';
import type { Engine } from './engine.js';
import type { Question } from './question.js';
import type { SiteDocument } from './sketch/document.js';
import * as sketch from './sketch/sketch.js';
import * as state from './state.js';
import type { Opened } from './tasks.js';
import { today } from './today.js';

/** Measure from a change of the sketch to its scores on the page. */
const RESCORED = 'rescored';

const isPlain = ({ yearsAhead, clearedNow }: Question): boolean => yearsAhead === 0 && !clearedNow;

/** Follows the sketch and what is asked of it: every change is ranked again. Returns the stop. */
export function followSketch(engine: Engine): () => void {
  /** The site without a sketch that was asked otherwise than it was opened. */
  let asked: Opened | null = null;
  /** The sketch as it was opened: until it is edited, what was found wrong in the files stands. */
  let first: SiteDocument | null = null;
  const show = (key: string | undefined, start: number) => (opened: Opened) => {
    const now = sketch.site.peek();
    if (now?.key !== key) return;
    if (now === null) asked = opened;
    const issues = now === first ? state.opened.peek()?.issues : undefined;
    state.opened.value = issues ? { ...opened, issues } : opened;
    // for whoever watches the speed of the page; nothing is kept
    performance.measure(RESCORED, { start });
    performance.clearMeasures(RESCORED);
  };
  return effect(() => {
    const site = sketch.site.value;
    const question = {
      today: today(),
      yearsAhead: state.yearsAhead.value,
      clearedNow: state.clearedNow.value,
    };
    const name = state.fileNames.peek().join(', ');
    if (site?.key !== first?.key) first = site;
    if (site !== null) {
      engine.update(site, name, question, show(site.key, performance.now()));
      return;
    }
    const open = state.opened.peek();
    if (open === null || (isPlain(question) && open !== asked)) return;
    engine.update(null, name, question, show(undefined, performance.now()));
  });
}
