import type { Box, LineDetail } from '@rootreach/core';
import { follower, type Tell } from './follower.js';
import type { View } from './large.js';
import type { Question } from './question.js';
import { server, type Task } from './serve.js';
import type { SiteDocument } from './sketch/document.js';
import type { Input, Opened } from './tasks.js';

export interface Request {
  readonly id: number;
  readonly task: Task;
}

export type Answer =
  | { readonly id: number; readonly value: unknown }
  | { readonly id: number; readonly error: string };

/** The one door to the model. */
export interface Engine {
  /** Reads and ranks. Resolves to null when a later request has overtaken this one. */
  open(inputs: readonly Input[], asOf: string): Promise<Opened | null>;
  /**
   * Ranks the site as it now is. Tells at once, with closed-form ranges where something changed, and again with
   * sampled ones when nothing has changed for a moment; what a later call has overtaken is not told.
   * @param site the sketch, or null for a site that was opened and is not edited.
   * @param name of the file, for what is found wrong in it.
   */
  update(site: SiteDocument | null, name: string, question: Question, tell: Tell): void;
  /** What to draw of a part of a large site; null where that was overtaken or no large site is open. */
  view(box: Box, metresPerPixel: number): Promise<View | null>;
  /** Id of a large site's stretch nearest to a place, or null. */
  nearest(lon: number, lat: number, withinM: number): Promise<string | null>;
  /** A stretch of a large site in full, with its line and its trees, or null. */
  around(id: string): Promise<LineDetail | null>;
}

type Ask = (task: Task) => Promise<unknown>;

/** Answers of one kind of task; one that a later task has overtaken is null, whether it failed or not. */
function latestOnly<T>(ask: Ask): (task: Task) => Promise<T | null> {
  let latest = 0;
  return async (task) => {
    latest += 1;
    const mine = latest;
    try {
      const value = (await ask(task)) as T;
      return mine === latest ? value : null;
    } catch (error) {
      if (mine !== latest) return null;
      throw error;
    }
  };
}

function engine(ask: Ask): Engine {
  const open = latestOnly<Opened>(ask);
  const view = latestOnly<View>(ask);
  const around = latestOnly<LineDetail>(ask);
  const following = follower(ask);
  return {
    open(inputs, asOf) {
      following.stop();
      return open({ do: 'open', inputs, asOf });
    },
    update: following.update,
    view: (box, metresPerPixel) => view({ do: 'view', box, metresPerPixel }),
    nearest: async (lon, lat, withinM) => (await ask({ do: 'nearest', lon, lat, withinM })) as string | null,
    around: (id) => around({ do: 'around', id }),
  };
}

/** Runs on the calling thread, for tests. */
export function engineInPlace(): Engine {
  const serve = server(async () => {});
  return engine(async (task) => (await serve(task)).value);
}

/** Runs in a worker, so that a town does not freeze the page. */
export function engineInWorker(worker: Worker): Engine {
  const waiting = new Map<number, { done: (value: unknown) => void; failed: (error: Error) => void }>();
  let last = 0;
  worker.onmessage = (event: MessageEvent<Answer>) => {
    const answer = event.data;
    const call = waiting.get(answer.id);
    waiting.delete(answer.id);
    if ('error' in answer) call?.failed(new Error(answer.error));
    else call?.done(answer.value);
  };
  worker.onerror = (event) => {
    for (const call of waiting.values()) call.failed(new Error(event.message || 'the worker stopped'));
    waiting.clear();
  };
  return engine(
    (task) =>
      new Promise((done, failed) => {
        last += 1;
        waiting.set(last, { done, failed });
        worker.postMessage({ id: last, task } satisfies Request);
      }),
  );
}
