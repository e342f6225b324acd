import { describe, expect, it } from 'vitest';
import { type Answer, engineInPlace, engineInWorker, type Request } from '../../apps/map/src/engine.js';
import { type Opened, tasks } from '../../apps/map/src/tasks.js';
import { siteText } from './site-text.js';

const AS_OF = '2026-11-25';

/** A worker that answers when told to, in the order told. */
class SlowWorker {
  onmessage: ((event: MessageEvent<Answer>) => void) | null = null;
  onerror: ((event: ErrorEvent) => void) | null = null;
  readonly asked: Request[] = [];

  postMessage(request: Request): void {
    this.asked.push(request);
  }

  answer(index: number): void {
    const request = this.asked[index] as Request;
    const opened = tasks.open(request.inputs, request.asOf);
    this.onmessage?.({ data: { id: request.id, opened } } as MessageEvent<Answer>);
  }

  fail(index: number, error: string): void {
    const { id } = this.asked[index] as Request;
    this.onmessage?.({ data: { id, error } } as MessageEvent<Answer>);
  }
}

const inSlowWorker = () => {
  const worker = new SlowWorker();
  return { worker, engine: engineInWorker(worker as unknown as Worker) };
};

describe('the engine in place', () => {
  it('reads and ranks a site, worst first', async () => {
    const opened = (await engineInPlace(tasks).open([siteText('corner-lot')], AS_OF)) as Opened;
    expect(opened.site.invented).toBe(true);
    expect(opened.result.asOf).toBe(AS_OF);
    const scores = opened.result.segments.map((segment) => segment.score);
    expect(scores.length).toBeGreaterThan(10);
    expect([...scores].sort((a, b) => b - a)).toEqual(scores);
  });

  it('reads several files together', async () => {
    const whole = siteText('corner-lot');
    const { features, ...rest } = JSON.parse(whole.text);
    const part = (name: string, kept: (kind: string) => boolean) => ({
      name,
      text: JSON.stringify({
        ...rest,
        features: features.filter((feature: { properties: { kind: string } }) =>
          kept(feature.properties.kind),
        ),
      }),
    });
    const parts = [part('trees', (kind) => kind === 'tree'), part('lines', (kind) => kind !== 'tree')];
    const together = (await engineInPlace(tasks).open(parts, AS_OF)) as Opened;
    const alone = (await engineInPlace(tasks).open([whole], AS_OF)) as Opened;
    expect(together.result.segments.map(({ id, score }) => [id, score])).toEqual(
      alone.result.segments.map(({ id, score }) => [id, score]),
    );
  });

  it('gives an answer that survives being sent between threads', async () => {
    const opened = await engineInPlace(tasks).open([siteText('french-drain-plan')], AS_OF);
    expect(structuredClone(opened)).toEqual(opened);
  });
});

describe('the engine in a worker', () => {
  it('drops the answer to a request that a later one has overtaken', async () => {
    const { worker, engine } = inSlowWorker();
    const first = engine.open([siteText('small-campus')], AS_OF);
    const second = engine.open([siteText('corner-lot')], AS_OF);
    worker.answer(1);
    worker.answer(0);
    expect(await first).toBeNull();
    expect((await second)?.result.site.name).toMatch(/corner lot/i);
  });

  it('says why where the model threw, but only of the latest request', async () => {
    const { worker, engine } = inSlowWorker();
    const first = engine.open([], AS_OF);
    const second = engine.open([], 'yesterday');
    worker.fail(0, 'too old to matter');
    worker.fail(1, 'not a date');
    expect(await first).toBeNull();
    await expect(second).rejects.toThrow('not a date');
  });

  it('fails what is waiting when the worker stops', async () => {
    const { worker, engine } = inSlowWorker();
    const waiting = engine.open([siteText('corner-lot')], AS_OF);
    worker.onerror?.({ message: 'out of memory' } as ErrorEvent);
    await expect(waiting).rejects.toThrow('out of memory');
  });
});
