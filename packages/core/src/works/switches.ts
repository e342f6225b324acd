import type { ChoiceId, Switch } from '../model/works.js';
import { MOST_YEARS } from './stretch-odds.js';
import { type Assessed, type EventCosts, type Terms, totalOf, valueUnder } from './value-under.js';

/** The choice of the lowest present value; null where none has one. */
export function cheapest(
  eligible: readonly Assessed[],
  costs: EventCosts,
  termsOf: (id: ChoiceId) => Terms,
): ChoiceId | null {
  let best: ChoiceId | null = null;
  let least = Infinity;
  for (const assessed of eligible) {
    const value = totalOf(valueUnder(assessed, costs, termsOf(assessed.choice.id)));
    if (value !== null && value < least - 1e-9) {
      least = value;
      best = assessed.choice.id;
    }
  }
  return best;
}

interface Question {
  readonly what: Switch['what'];
  readonly value: number;
  readonly range: readonly [number, number];
  readonly whole?: boolean;
  readonly termsWith: (value: number, id: ChoiceId) => Terms;
}

const STEPS = 60;
const HALVINGS = 40;

/** Values from the present one to an end of the range, evenly by ratio where it is a factor, else by difference. */
function valuesTo(end: number, { value, whole }: Question, byRatio: boolean): number[] {
  const steps = whole ? Math.abs(end - value) : STEPS;
  return Array.from({ length: steps }, (_, i) => {
    const t = (i + 1) / steps;
    return byRatio ? value * (end / value) ** t : value + (end - value) * t;
  });
}

/** Nearest value on one side at which another choice comes first, by trying values and then halving. */
function switchTowards(
  end: number,
  question: Question,
  winnerAt: (value: number) => ChoiceId | null,
  now: ChoiceId,
): { at: number; becomes: ChoiceId } | null {
  const byRatio = question.range[0] > 0 && !question.whole;
  let before = question.value;
  for (const value of valuesTo(end, question, byRatio)) {
    const becomes = winnerAt(value);
    if (becomes === null || becomes === now) {
      before = value;
      continue;
    }
    if (question.whole) return { at: value, becomes };
    let [same, other, winner] = [before, value, becomes];
    for (let i = 0; i < HALVINGS; i++) {
      const middle = (same + other) / 2;
      const there = winnerAt(middle);
      if (there === null || there === now) same = middle;
      else [other, winner] = [middle, there];
    }
    return { at: other, becomes: winner };
  }
  return null;
}

function answer(question: Question, winnerAt: (value: number) => ChoiceId | null, now: ChoiceId): Switch {
  const { what, value, range } = question;
  const found = range
    .filter((end) => end !== value)
    .flatMap((end) => switchTowards(end, question, winnerAt, now) ?? [])
    .sort(
      (a, b) =>
        Math.abs(Math.log((a.at + 1e-9) / (value + 1e-9))) -
        Math.abs(Math.log((b.at + 1e-9) / (value + 1e-9))),
    );
  return { what, value, range, at: found[0]?.at ?? null, becomes: found[0]?.becomes ?? null };
}

/**
 * What would change the answer: each number varied alone, everything worked out again, until another choice has the
 * lowest present value. Limits of the owner stay as they are.
 */
export function switchesOf(
  eligible: readonly Assessed[],
  costs: EventCosts,
  terms: Terms,
  now: ChoiceId,
): Switch[] {
  const questions: Question[] = [
    {
      what: 'horizon-years',
      value: terms.horizonYears,
      range: [1, MOST_YEARS],
      whole: true,
      termsWith: (horizonYears) => ({ ...terms, horizonYears }),
    },
    {
      what: 'discount-rate',
      value: terms.discountRate,
      range: [0, 0.3],
      termsWith: (discountRate) => ({ ...terms, discountRate }),
    },
    {
      what: 'price-now',
      value: 1,
      range: [1, 10],
      termsWith: (nowFactor, id) => (id === now ? { ...terms, nowFactor } : terms),
    },
    {
      what: 'trouble-cost',
      value: 1,
      range: [0.02, 50],
      termsWith: (troubleFactor) => ({ ...terms, troubleFactor }),
    },
    { what: 'root-rate', value: 1, range: [0.02, 50], termsWith: (rootFactor) => ({ ...terms, rootFactor }) },
  ];
  return questions.map((question) =>
    answer(question, (value) => cheapest(eligible, costs, (id) => question.termsWith(value, id)), now),
  );
}
