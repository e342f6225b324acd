import type { Box } from '@rootreach/core';
import type { Question } from './question.js';
import { Session, type SketchPatch } from './session.js';
import type { Input, InputFile } from './tasks.js';
import { columnsOf } from './town.js';

/** What the page asks of the model, as plain values. */
export type Task =
  | { readonly do: 'open'; readonly inputs: readonly Input[]; readonly asOf: string }
  | { readonly do: 'ask'; readonly question: Question }
  /** `settled`: wait for the sampled ranges of all rows. */
  | {
      readonly do: 'take';
      readonly patch: SketchPatch;
      readonly question: Question;
      readonly settled: boolean;
    }
  | { readonly do: 'settle' }
  | { readonly do: 'view'; readonly box: Box; readonly metresPerPixel: number }
  | { readonly do: 'nearest'; readonly lon: number; readonly lat: number; readonly withinM: number }
  | { readonly do: 'around'; readonly id: string };

/** An answer, and what of it is handed over instead of copied. */
export interface Served {
  readonly value: unknown;
  readonly handed: readonly ArrayBuffer[];
}

/** Rows sampled before somebody who waits is heard: a few milliseconds. */
const ROWS_AT_ONCE = 24;

const read = async (input: Input): Promise<InputFile> =>
  'text' in input ? input : { name: input.name, text: await input.file.text() };

const plain = (value: unknown): Served => ({ value, handed: [] });

/** Lets waiting messages in. */
export type Pause = () => Promise<void>;

/** Samples what is left, part by part; false where a later task came in between. */
async function settle(session: Session, pause: Pause, overtaken: () => boolean): Promise<boolean> {
  while (!session.settle(ROWS_AT_ONCE)) {
    await pause();
    if (overtaken()) return false;
  }
  return true;
}

/**
 * Answers the page's tasks one by one.
 * @param pause lets other messages in during long work.
 */
export function server(pause: Pause): (task: Task) => Promise<Served> {
  const session = new Session();
  let latest = 0;
  let turn: Promise<unknown> = Promise.resolve();

  async function serve(task: Task, overtaken: () => boolean): Promise<Served> {
    switch (task.do) {
      case 'open':
        return plain(session.open(await Promise.all(task.inputs.map(read)), task.asOf));
      case 'ask':
        return plain(session.ask(task.question));
      case 'take':
        session.take(task.patch, task.question);
        if (task.settled) await settle(session, pause, () => false);
        return plain(session.changes());
      case 'settle':
        return plain((await settle(session, pause, overtaken)) ? session.changes() : null);
      case 'view': {
        const view = session.view(task.box, task.metresPerPixel);
        return { value: view, handed: view ? columnsOf(view) : [] };
      }
      case 'nearest':
        return plain(session.nearest(task.lon, task.lat, task.withinM));
      case 'around':
        return plain(session.around(task.id));
    }
  }

  return (task) => {
    latest += 1;
    const mine = latest;
    const answer = turn.then(() => serve(task, () => latest !== mine));
    turn = answer.catch(() => undefined);
    return answer;
  };
}
