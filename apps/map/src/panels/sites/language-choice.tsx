import { language, speak, words } from '../../words/words.js';
import { RadioRow } from '../forms/radio-row.js';

/** Languages by their own names, so that they can be found in any other. */
const LANGUAGES = [
  ['en', 'English'],
  ['es', 'Español'],
] as const;

/** The language of the page. */
export function LanguageChoice() {
  return (
    <RadioRow
      label={words.value.header.language}
      value={language.value}
      choices={LANGUAGES}
      choose={(to) => void speak(to)}
    />
  );
}
