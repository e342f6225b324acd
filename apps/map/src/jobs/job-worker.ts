import { doJob, type Job } from './job.js';

self.onmessage = ({ data: { id, job } }: MessageEvent<{ readonly id: number; readonly job: Job }>) => {
  doJob(job, (share) => self.postMessage({ id, share })).then(
    (value) => self.postMessage({ id, value }),
    (error: unknown) =>
      self.postMessage({ id, error: error instanceof Error ? error.message : String(error) }),
  );
};
