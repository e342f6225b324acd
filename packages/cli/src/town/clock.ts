import type { Io } from '../io.js';

/** Milliseconds between two words about how far it has come. */
const EVERY_MS = 500;

/** Says on a terminal how much of a long piece of work is done, how fast it goes and how long is left. */
export function shareTeller(io: Io, doing: string, total: number, what: string): (share: number) => void {
  const started = performance.now();
  let last = started + EVERY_MS;
  return (share) => {
    const now = performance.now();
    if (!io.stderrIsTTY || (now < last && share < 1)) return;
    if (now - started < 2 * EVERY_MS) return;
    last = now + EVERY_MS;
    const seconds = (now - started) / 1000;
    const rate = Math.round((share * total) / seconds).toLocaleString('en');
    const left = share > 0 ? Math.ceil((seconds * (1 - share)) / share) : 0;
    const end = share >= 1 ? '\n' : '\r';
    io.stderr.write(
      `${doing}: ${Math.round(100 * share)} %, ${rate} ${what} a second, ${left} s left   ${end}`,
    );
  };
}
