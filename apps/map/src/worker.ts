import type { Answer, Request } from './engine.js';
import { server } from './serve.js';

/** A turn of the message loop; a timer would wait four milliseconds. */
const channel = new MessageChannel();
const resume: (() => void)[] = [];
channel.port1.onmessage = () => resume.shift()?.();
const pause = () =>
  new Promise<void>((done) => {
    resume.push(done);
    channel.port2.postMessage(null);
  });

const serve = server(pause);

self.onmessage = ({ data: { id, task } }: MessageEvent<Request>) => {
  serve(task).then(
    ({ value, handed }) => self.postMessage({ id, value } satisfies Answer, [...handed]),
    (error: unknown) =>
      self.postMessage({
        id,
        error: error instanceof Error ? error.message : String(error),
      } satisfies Answer),
  );
};
