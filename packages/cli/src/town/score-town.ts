import { joinBlocks, type RankOptions, type Town, type TownBlock } from '@rootreach/core';
import type { Pool } from './pool.js';

/** Lines scored at a time. */
const BLOCK_LINES = 2000;

/** Scores all lines of a town in blocks, several at once, and puts them together in the order of the lines. */
export async function scoreTown(
  town: Town,
  options: RankOptions,
  pool: Pool,
  progress: (share: number) => void,
): Promise<TownBlock> {
  // threads do not speak of trees by their ids
  await pool.tellAll({ do: 'take-town', town: { ...town, trees: { ...town.trees, ids: [] } }, options });
  const starts = Array.from(
    { length: Math.ceil(town.drains.count / BLOCK_LINES) },
    (_, i) => i * BLOCK_LINES,
  );
  const tasks = starts.map((from) => ({
    do: 'score' as const,
    from,
    to: Math.min(town.drains.count, from + BLOCK_LINES),
  }));
  return joinBlocks((await pool.run(tasks, (done) => progress(done / tasks.length))) as TownBlock[]);
}
