import { createHash } from 'node:crypto';
import type { RankOptions, TownBlock } from '@rootreach/core';
import type { Args } from '../args.js';
import { CannotDo } from '../cannot-do.js';
import type { Io } from '../io.js';
import { reportIssues } from '../print/issues.js';
import { intakeOptionsFrom } from '../taking-in.js';
import { type CachedTown, cacheKey, readCache, writeCache } from './cache.js';
import { shareTeller } from './clock.js';
import { type GatheredTown, gatherTown } from './gather-town.js';
import { isSiteHead } from './is-site-head.js';
import type { Pool } from './pool.js';
import { scoreTown } from './score-town.js';

/** A town with the scores of all its lines. */
export type ScoredTown = GatheredTown & { readonly block: TownBlock };

/** What scores depend on beside the town, as a short text. */
function madeWith({ asOf, horizonYears, segmentM, learned }: RankOptions): string {
  const options = JSON.stringify([asOf, horizonYears ?? null, segmentM ?? null, learned ?? null]);
  return createHash('sha256').update(options).digest('hex');
}

/** The town and its scores: from the cache what fits, the rest from the files; what is new goes into the cache. */
export async function scoredFrom(args: Args, scoring: RankOptions, pool: Pool, io: Io): Promise<ScoredTown> {
  const cache = args.text('cache');
  const { asOf, horizonYears } = scoring;
  const intake = await intakeOptionsFrom(args);
  if (cache !== undefined && args.files.includes('-'))
    throw new CannotDo('--cache keeps what was read from files, not from standard input');
  // a file that is not there is said before any work is done
  for (const path of args.files) if (path !== '-') isSiteHead(path);
  const key = () => cacheKey(args.files, { asOf, horizonYears: horizonYears ?? null, intake });
  const Room = pool.threads > 0 ? SharedArrayBuffer : ArrayBuffer;
  const kept: CachedTown | null = cache === undefined ? null : readCache(cache, key(), Room);
  const growth = { asOf, ...(horizonYears === undefined ? {} : { horizonYears }) };
  const progress = shareTeller(io, 'Reading', 100, '%');
  const read = kept ?? (await gatherTown(args.files, { ...growth, intake, progress }, pool, io));
  if (read.town.drains.count === 0) {
    if ('issues' in read) reportIssues(read.issues, io, 'metric');
    throw new CannotDo('there is no drain line in these files');
  }
  const made = madeWith(scoring);
  if (kept?.scores.madeWith === made) return { ...kept, block: kept.scores.block };
  const tell = shareTeller(io, 'Scoring', read.town.drains.count, 'lines');
  const block = await scoreTown(read.town, scoring, pool, tell);
  if (cache !== undefined) await writeCache(cache, key(), { ...read, scores: { madeWith: made, block } });
  return { ...read, block };
}
