import { parentPort } from 'node:worker_threads';
import { buffersOf, type Task, taskRunner } from './tasks.js';

const run = taskRunner();

parentPort?.on('message', ({ id, task }: { readonly id: number; readonly task: Task }) => {
  try {
    const answer = run(task);
    parentPort?.postMessage({ id, answer }, buffersOf(answer) as ArrayBuffer[]);
  } catch (error) {
    parentPort?.postMessage({ id, error: error instanceof Error ? error.message : String(error) });
  }
});
