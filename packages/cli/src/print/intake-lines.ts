import { type IntakeReport, wordEntry, wordGuess, wordIntake } from '@rootreach/intake';
import { printable } from './printable.js';
import { wrap } from './wrap.js';

/** What was made of a file in another format: how its columns were read, and what became of its rows. */
export function intakeLines(report: IntakeReport, width: number): string[] {
  const indented = (text: string) => `  ${wrap(printable(text), width - 2, 4)}`;
  return [
    wrap(printable(`${wordIntake(report)}.`), width),
    '  Columns, as they were read:',
    ...report.guesses.map((guess) => `  ${indented(wordGuess(guess))}`),
    ...report.entries.map((entry) => indented(wordEntry(entry))),
  ];
}
