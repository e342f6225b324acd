import type { Job, JobResults } from './job.js';

type Reply =
  | { readonly id: number; readonly share: number }
  | { readonly id: number; readonly value: unknown }
  | { readonly id: number; readonly error: string };

interface Waiting {
  readonly done: (value: unknown) => void;
  readonly failed: (error: Error) => void;
  readonly tell: (share: number) => void;
}

let worker: Worker | null = null;
let last = 0;
const waiting = new Map<number, Waiting>();

function hear({ data }: MessageEvent<Reply>): void {
  const call = waiting.get(data.id);
  if (!call) return;
  if ('share' in data) {
    call.tell(data.share);
    return;
  }
  waiting.delete(data.id);
  if ('error' in data) call.failed(new Error(data.error));
  else call.done(data.value);
}

function started(): Worker {
  if (worker) return worker;
  worker = new Worker(new URL('./job-worker.ts', import.meta.url), { type: 'module' });
  worker.onmessage = hear;
  worker.onerror = (event) => {
    for (const call of waiting.values()) call.failed(new Error(event.message || 'the worker stopped'));
    waiting.clear();
  };
  return worker;
}

/** Does a job in a worker of its own. @param tell how much is done, 0 to 1. */
export function runJob<K extends Job['do']>(
  job: Extract<Job, { do: K }>,
  tell: (share: number) => void = () => undefined,
): Promise<JobResults[K]> {
  last += 1;
  const id = last;
  return new Promise((done, failed) => {
    waiting.set(id, { done: done as (value: unknown) => void, failed, tell });
    started().postMessage({ id, job });
  });
}

/** Ends all that is under way: a search in the middle of its work hears nothing else. */
export function stopJobs(): void {
  worker?.terminate();
  worker = null;
  waiting.clear();
}
