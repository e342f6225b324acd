import type { InputFile, Opened, Tasks } from './tasks.js';

export interface Request {
  readonly id: number;
  readonly inputs: readonly InputFile[];
  readonly asOf: string;
}

export type Answer =
  | { readonly id: number; readonly opened: Opened }
  | { readonly id: number; readonly error: string };

/** The one door to the model. */
export interface Engine {
  /** Reads and ranks. Resolves to null when a later request has overtaken this one. */
  open(inputs: readonly InputFile[], asOf: string): Promise<Opened | null>;
}

type Run = (request: Request) => Promise<Opened>;

function latestWins(run: Run): Engine {
  let latest = 0;
  return {
    async open(inputs, asOf) {
      latest += 1;
      const id = latest;
      try {
        const opened = await run({ id, inputs, asOf });
        return id === latest ? opened : null;
      } catch (error) {
        if (id !== latest) return null;
        throw error;
      }
    },
  };
}

/** Runs on the calling thread, for tests. */
export function engineInPlace(tasks: Tasks): Engine {
  return latestWins(async ({ inputs, asOf }) => tasks.open(inputs, asOf));
}

/** Runs in a worker, so that a town does not freeze the page. */
export function engineInWorker(worker: Worker): Engine {
  const waiting = new Map<number, { done: (opened: Opened) => void; failed: (error: Error) => void }>();
  worker.onmessage = (event: MessageEvent<Answer>) => {
    const answer = event.data;
    const call = waiting.get(answer.id);
    waiting.delete(answer.id);
    if ('opened' in answer) call?.done(answer.opened);
    else call?.failed(new Error(answer.error));
  };
  worker.onerror = (event) => {
    for (const call of waiting.values()) call.failed(new Error(event.message || 'the worker stopped'));
    waiting.clear();
  };
  return latestWins(
    (request) =>
      new Promise((done, failed) => {
        waiting.set(request.id, { done, failed });
        worker.postMessage(request);
      }),
  );
}
