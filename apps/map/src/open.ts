import { batch } from '@preact/signals';
import { wordIssue } from '@rootreach/core';
import { type DemoKey, demos } from './demos.js';
import type { Engine } from './engine.js';
import { readDocument } from './sketch/read-document.js';
import { openDocument } from './sketch/sketch.js';
import * as state from './state.js';
import type { InputFile, Opened } from './tasks.js';
import { today } from './today.js';
import { words } from './words/words.js';

/** More text than this would fill a phone's memory. */
const MOST_CHARACTERS = 60_000_000;

/** What a local server answers. */
interface Served {
  readonly files: readonly InputFile[];
}

/** A larger file is shown but not edited here: each step would take a moment too long. */
const MOST_EDITABLE = 4_000_000;

const reason = (error: unknown): string => (error instanceof Error ? error.message : String(error));

function whyUnusable({ site, issues }: Opened): string | null {
  if (site.drains.length > 0 || site.trees.length > 0) return null;
  const worst = issues.find((issue) => issue.severity === 'error') ?? issues[0];
  return worst ? wordIssue(worst) : words.value.problem.nothingInIt;
}

function show(
  opened: Opened,
  inputs: readonly InputFile[],
  key: DemoKey | null,
  stretch: string | null,
): void {
  const known = opened.result.segments.some((row) => row.id === stretch);
  batch(() => {
    state.problem.value = null;
    state.opened.value = opened;
    state.siteKey.value = key;
    state.fileNames.value = inputs.map((input) => input.name);
    state.chosenTree.value = null;
    state.hintedStretch.value = null;
    state.chosenStretch.value = known ? stretch : null;
    const characters = inputs.reduce((sum, input) => sum + input.text.length, 0);
    openDocument(characters > MOST_EDITABLE ? null : readDocument(crypto.randomUUID(), inputs, opened.site));
  });
}

/** What the page does with files: read, rank, and show them, or say why not and leave the open site alone. */
export function opener(engine: Engine) {
  let turns = 0;

  async function openInputs(
    inputs: readonly InputFile[],
    key: DemoKey | null = null,
    stretch: string | null = null,
  ): Promise<void> {
    const names = inputs.map((input) => input.name).join(', ');
    const characters = inputs.reduce((sum, input) => sum + input.text.length, 0);
    if (characters > MOST_CHARACTERS) {
      state.problem.value = words.value.problem.tooLarge(names);
      return;
    }
    state.busy.value = true;
    try {
      const opened = await engine.open(inputs, today());
      if (opened === null) return;
      const why = whyUnusable(opened);
      if (why === null) show(opened, inputs, key, stretch);
      else state.problem.value = words.value.problem.couldNotOpen(names, why);
    } catch (error) {
      state.problem.value = words.value.problem.couldNotOpen(names, reason(error));
    }
    state.busy.value = false;
  }

  /** Fetches from the page's own folder, then opens; a slow answer to an earlier wish is dropped. */
  async function openFetched(
    address: string,
    inputsOf: (answer: Response) => Promise<readonly InputFile[]>,
    key: DemoKey | null,
    stretch: string | null,
  ): Promise<void> {
    const turn = ++turns;
    try {
      const answer = await fetch(address);
      if (!answer.ok) throw new Error(words.value.problem.notThere);
      const inputs = await inputsOf(answer);
      if (turn === turns) await openInputs(inputs, key, stretch);
    } catch (error) {
      if (turn !== turns) return;
      state.problem.value = words.value.problem.couldNotOpen(address, reason(error));
      state.busy.value = false;
    }
  }

  async function openDemo(key: DemoKey, stretch: string | null = null): Promise<void> {
    const inputsOf = async (answer: Response) => [{ name: `${key}.geojson`, text: await answer.text() }];
    await openFetched(demos[key], inputsOf, key, stretch);
  }

  async function openFiles(files: readonly File[]): Promise<void> {
    if (files.length === 0) return;
    turns += 1;
    const inputs = await Promise.all(
      files.map(async (file) => ({ name: file.name, text: await file.text() })),
    );
    await openInputs(inputs);
  }

  /** Files handed over by a local server, named in the page's head; false when there are none. */
  async function openServed(address: string, stretch: string | null): Promise<boolean> {
    if (address === '') return false;
    const inputsOf = async (answer: Response) => ((await answer.json()) as Served).files;
    await openFetched(`./${address}`, inputsOf, null, stretch);
    return true;
  }

  return { openInputs, openDemo, openFiles, openServed };
}

export type Opener = ReturnType<typeof opener>;
