import { type LearnedModel, yearOf } from '@rootreach/core';
import type { Args } from './args.js';
import { CannotDo } from './cannot-do.js';
import type { OptionSpecs } from './command.js';
import type { Io } from './io.js';

/** Options that every command on site files has. */
export const siteOptions: OptionSpecs = {
  'as-of': { value: 'DATE', text: 'work it out for this date (2031-04-01 or 2031); today if not given' },
  units: { value: 'us|metric', text: 'feet and inches, or metres; as the site file says, else metric' },
  json: { value: null, text: 'print JSON, lengths in metres' },
  out: { value: 'PATH', text: 'write to a file instead of the screen' },
  help: { value: null, text: 'show this' },
};

/** Options of commands that score. */
export const scoringOptions: OptionSpecs = {
  years: { value: 'N', text: 'look this many years ahead; 10 if not given' },
  'segment-m': { value: 'N', text: 'longest stretch to score in one, in metres; 3 if not given' },
};

function today({ now }: Io): string {
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** The date asked for, else today. */
export function asOfFrom(args: Args, io: Io): string {
  const given = args.text('as-of');
  if (given !== undefined && yearOf(given) === undefined) {
    throw new CannotDo(`--as-of takes a date such as 2031-04-01, or a year, got '${given}'`);
  }
  return given ?? today(io);
}

export interface Scoring {
  readonly asOf: string;
  readonly horizonYears?: number;
  readonly segmentM?: number;
  readonly learned?: LearnedModel;
}

/** Date, horizon and length of segments. */
export function scoringFrom(args: Args, io: Io): Scoring {
  const horizonYears = args.number('years', { least: 0.5, most: 100 });
  const segmentM = args.number('segment-m', { least: 0.3, most: 1000 });
  return {
    asOf: asOfFrom(args, io),
    ...(horizonYears === undefined ? {} : { horizonYears }),
    ...(segmentM === undefined ? {} : { segmentM }),
  };
}
