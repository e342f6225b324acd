import { describe, expect, it } from 'vitest';
import { type Answer, engineInPlace, engineInWorker, type Request } from '../../apps/map/src/engine.js';
import { openSite } from '../../apps/map/src/open-site.js';
import { server } from '../../apps/map/src/serve.js';
import type { InputFile, Opened } from '../../apps/map/src/tasks.js';
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
    const { id, task } = this.asked[index] as Request;
    if (task.do !== 'open') throw new Error(`not an opening: ${task.do}`);
    const value = openSite(task.inputs as readonly InputFile[], task.asOf).opened;
    this.onmessage?.({ data: { id, value } } as MessageEvent<Answer>);
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
    const opened = (await engineInPlace().open([siteText('corner-lot')], AS_OF)) as Opened;
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
    const together = (await engineInPlace().open(parts, AS_OF)) as Opened;
    const alone = (await engineInPlace().open([whole], AS_OF)) as Opened;
    expect(together.result.segments.map(({ id, score }) => [id, score])).toEqual(
      alone.result.segments.map(({ id, score }) => [id, score]),
    );
  });

  it('reads a file that the page has not read', async () => {
    const { name, text } = siteText('corner-lot');
    const unread = (await engineInPlace().open([{ name, file: new Blob([text]) }], AS_OF)) as Opened;
    expect(unread).toEqual(await engineInPlace().open([{ name, text }], AS_OF));
  });

  it('gives an answer that survives being sent between threads', async () => {
    const opened = await engineInPlace().open([siteText('french-drain-plan')], AS_OF);
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

describe('the worker', () => {
  it('answers one task after the other, and goes on after one that failed', async () => {
    const serve = server(async () => {});
    const failed = serve({ do: 'open', inputs: [], asOf: 'yesterday' });
    const then = serve({ do: 'open', inputs: [siteText('corner-lot')], asOf: AS_OF });
    await expect(failed).rejects.toThrow(/ISO date/);
    expect(((await then).value as Opened).result.segments.length).toBeGreaterThan(10);
  });

  it('stops sampling where another task comes in', async () => {
    let paused = 0;
    const serve = server(async () => {
      paused += 1;
      if (paused === 1) void serve({ do: 'nearest', lon: 0, lat: 0, withinM: 1 });
    });
    const { features, rootreach } = JSON.parse(siteText('corner-lot').text);
    const from = Int32Array.from(features, (_, i) => -1 - i);
    const patch = { name: 'lot', features: { from, made: features }, members: { rootreach }, anew: true };
    const question = { today: AS_OF, yearsAhead: 0, clearedNow: false };
    await serve({ do: 'take', patch, question, settled: false });
    const settled = await serve({ do: 'settle' });
    expect(settled.value).toBeNull();
    expect(paused).toBe(1);
    expect((await serve({ do: 'settle' })).value).not.toBeNull();
  });
});
