import type { Answer, Request } from './engine.js';
import { tasks } from './tasks.js';

self.onmessage = (event: MessageEvent<Request>) => {
  const { id, inputs, asOf } = event.data;
  let answer: Answer;
  try {
    answer = { id, opened: tasks.open(inputs, asOf) };
  } catch (error) {
    answer = { id, error: error instanceof Error ? error.message : String(error) };
  }
  self.postMessage(answer);
};
