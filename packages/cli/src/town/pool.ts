import { Worker } from 'node:worker_threads';
import { type Answer, type Task, taskRunner } from './tasks.js';

/** Threads that take tasks as they come free; answers come back in the order of the tasks. */
export interface Pool {
  readonly threads: number;
  /**
   * @param tasks Made when a thread is free for them.
   * @param done Called with the number of tasks answered so far.
   */
  readonly run: (
    tasks: Iterable<Task> | AsyncIterable<Task>,
    done?: (answered: number) => void,
  ) => Promise<Answer[]>;
  /** Gives every thread the same task. */
  readonly tellAll: (task: Task) => Promise<void>;
  readonly close: () => Promise<void>;
}

/** Most of what a thread makes is gone at once: more room for it saves no time (measured), and each thread has its own. */
const LIMITS = { maxYoungGenerationSizeMb: 32 };

/** Without threads: the same work on the caller's own. */
function inPlace(): Pool {
  const run = taskRunner();
  return {
    threads: 0,
    run: async (tasks, done) => {
      const answers: Answer[] = [];
      for await (const task of tasks) done?.(answers.push(run(task)));
      return answers;
    },
    tellAll: async (task) => {
      run(task);
    },
    close: async () => undefined,
  };
}

interface Reply {
  readonly id: number;
  readonly answer?: Answer;
  readonly error?: string;
}

function ask(worker: Worker, id: number, task: Task): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const end = (): void => {
      worker.off('message', heard);
      worker.off('error', failed);
    };
    const heard = (reply: Reply): void => {
      if (reply.id !== id) return;
      end();
      if (reply.error === undefined) resolve(reply.answer ?? null);
      else reject(new Error(reply.error));
    };
    const failed = (error: Error): void => {
      end();
      reject(error);
    };
    worker.on('message', heard);
    worker.on('error', failed);
    worker.postMessage({ id, task });
  });
}

/** Tasks one after the other, however many ask for the next one at a time. */
async function* inTurn(tasks: Iterable<Task> | AsyncIterable<Task>): AsyncGenerator<Task, undefined> {
  yield* tasks;
  return undefined;
}

/** Tasks that a thread has before it, so that it does not wait for the next one to be made. */
const AHEAD = 2;

/** @param threads 0 works on the caller's own thread; others are started when there is something for them to do. */
export function openPool(threads: number): Pool {
  if (threads === 0) return inPlace();
  let started: Worker[] | null = null;
  const start = (): Worker[] => {
    started ??= Array.from(
      { length: threads },
      () => new Worker(new URL('./worker.js', import.meta.url), { resourceLimits: LIMITS }),
    );
    return started;
  };
  return {
    threads,
    async run(tasks, done) {
      const answers: Answer[] = [];
      const coming = inTurn(tasks);
      let given = 0;
      let answered = 0;
      const serve = async (worker: Worker): Promise<void> => {
        for (;;) {
          const { value: task, done: isOver } = await coming.next();
          if (isOver) return;
          const id = given++;
          answers[id] = await ask(worker, id, task);
          done?.(++answered);
        }
      };
      const waiting = Array.from({ length: AHEAD }, start).flat();
      await Promise.all(waiting.map(serve));
      return answers;
    },
    async tellAll(task) {
      await Promise.all(start().map((worker, i) => ask(worker, i, task)));
    },
    async close() {
      await Promise.all((started ?? []).map((worker) => worker.terminate()));
    },
  };
}
