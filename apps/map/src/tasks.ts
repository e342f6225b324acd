import { type Issue, type RankResult, rank, readSite, type Site } from '@rootreach/core';

export interface InputFile {
  readonly name: string;
  readonly text: string;
}

/** A site as read, and what the model says of it. */
export interface Opened {
  readonly site: Site;
  readonly issues: readonly Issue[];
  readonly result: RankResult;
}

/** What the worker offers: everything the page asks of the model, as plain values in and out. */
export const tasks = {
  open(inputs: readonly InputFile[], asOf: string): Opened {
    const { site, issues } = readSite(inputs);
    return { site, issues, result: rank(site, { asOf }) };
  },
};

export type Tasks = typeof tasks;
