import type { Choice, DecideResult } from '@rootreach/core';
import { el, type Markup, text } from '../markup/markup.js';
import { dateSaid } from '../say/dates.js';
import { moneySaid } from '../say/money.js';
import { shareSaid } from '../say/odds-said.js';
import { capital } from '../say/trees-said.js';
import type { Words } from '../words/words.js';
import { part } from './frame.js';

/** Rows that a person reads to the end (judgement). */
const MOST_ROWS = 4;
const MOST_IMPOSSIBLE = 4;

/** Advice first, then the runner-up, then the rest by what they cost over the years. */
function inOrder({ choices, recommended, runnerUp }: DecideResult): Choice[] {
  const place = ({ id, presentValue }: Choice): number =>
    id === recommended ? -2 : id === runnerUp ? -1 : (presentValue ?? Number.MAX_VALUE);
  return choices.filter(({ possible }) => possible).sort((a, b) => place(a) - place(b));
}

function row(choice: Choice, decided: DecideResult, words: Words): Markup {
  const { choices } = words.owner;
  const { id, now, presentValue, chance, tree, garden } = choice;
  const cost = (amount: number | null, nothing: string): string =>
    amount === null ? choices.unpriced : amount === 0 ? nothing : moneySaid(amount, decided.currency);
  const tag = id === decided.recommended ? choices.advised : id === decided.runnerUp ? choices.second : null;
  return el(
    'tr',
    id === decided.recommended ? { class: 'best' } : {},
    el(
      'th',
      { scope: 'row' },
      text(`${choices.names[id]} `),
      tag === null ? [] : el('span', { class: 'tag' }, text(tag)),
      el('p', { class: 'fine' }, text(choices.done[id])),
    ),
    el('td', { class: 'n', 'data-name': choices.now }, text(cost(now, choices.free))),
    el(
      'td',
      { class: 'n', 'data-name': choices.over(decided.horizonYears) },
      text(cost(presentValue, choices.free)),
    ),
    el(
      'td',
      { class: 'n', 'data-name': choices.odds(10) },
      text(chance === null ? '' : shareSaid(chance['10'].likely, words)),
    ),
    el(
      'td',
      { 'data-name': choices.tree },
      text(capital(`${choices.trees[tree.effect]}, ${choices.gardens[garden]}`)),
    ),
  );
}

/** What is ruled out, with the reason, in one line. */
function impossible({ choices: all }: DecideResult, words: Words): string | null {
  const { choices } = words.owner;
  const told = all
    .filter(({ possible }) => !possible)
    .flatMap(({ id, reasons }) => {
      const reason = reasons.map((code) => choices.reasons[code]).find((said) => said !== undefined);
      return reason === undefined ? [] : [choices.because(choices.names[id].toLowerCase(), reason)];
    })
    .slice(0, MOST_IMPOSSIBLE);
  return told.length === 0 ? null : choices.not(told.join('; '));
}

function pricesSaid({ prices }: DecideResult, words: Words): string {
  const { choices } = words.owner;
  if (prices.invented) return choices.invented;
  return prices.dated === null ? choices.undated : choices.dated(dateSaid(prices.dated.to, words));
}

/** The choices side by side: what is done, what it costs, what it leaves of the odds, what it does to the tree. */
export function choicesPart(decided: DecideResult, words: Words): Markup {
  const { choices } = words.owner;
  const heads: readonly [string, string][] = [
    [choices.choice, ''],
    [choices.now, 'n'],
    [choices.over(decided.horizonYears), 'n'],
    [choices.odds(10), 'n'],
    [choices.tree, ''],
  ];
  const not = impossible(decided, words);
  const percent = String(Math.round(1000 * decided.discountRate) / 10);
  return part(
    choices.title,
    '',
    el(
      'div',
      { class: 'wide' },
      el(
        'table',
        {},
        el(
          'thead',
          {},
          el(
            'tr',
            {},
            heads.map(([said, kind]) => el('th', { scope: 'col', class: kind || undefined }, text(said))),
          ),
        ),
        el(
          'tbody',
          {},
          inOrder(decided)
            .slice(0, MOST_ROWS)
            .map((choice) => row(choice, decided, words)),
        ),
      ),
    ),
    ...(not === null ? [] : [el('p', { class: 'fine' }, text(not))]),
    el(
      'p',
      { class: 'fine' },
      text(`${choices.overMeans(decided.horizonYears, percent)} ${pricesSaid(decided, words)}`),
    ),
  );
}
