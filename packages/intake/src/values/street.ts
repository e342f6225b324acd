/** `12`, `12-14`, `12a`, `12 1/2`, `12 bis` before the street. */
const NUMBER_BEFORE = /^\d+[a-z]?(?:\s?[-–/&]\s?\d+[a-z]?)?(?:\s\d\/\d)?(?:\s(?:bis|ter|quater))?\s+(?=\S)/i;
/** `12a`, `nº 12`, `5/b` behind it. */
const NUMBER_BEHIND = /[\s,]+(?:n[º°.]?\s?)?\d+\s?[a-z]?(?:\s?[-–/]\s?(?:\d+\s?[a-z]?|[a-z]))?$/i;
/** Words that begin or end a street's name where the number stands behind it. */
const BEHIND_FIRST =
  /^(?:calle|c\/|avenida|avda?\.?|paseo|plaza|camino|via|viale|piazza|corso|largo|rua|rue|am|an der|im|zum|zur)\s/i;
const BEHIND_LAST =
  /(?:stra(?:ß|ss)e|str\.|weg|platz|gasse|allee|ring|damm|ufer|steig|laan|straat|plein|kade|gracht|singel|dijk)$/i;
/** `12, rue des Lilas`. */
const ONLY_NUMBER = /^\s*\d+\s?[a-z]?(?:\s(?:bis|ter|quater))?\s*$/i;
/** What is left of `42 St` is no name. */
const ONLY_KIND =
  /^(?:st|street|ave?|avenue|rd|road|blvd|boulevard|dr|drive|ln|lane|ct|court|pl|place|way|hwy|highway)\.?$/i;

/**
 * The street of an address, without the number of the house: `123 ELM ST`, `Lindenstraße 12a`, `12, rue des Lilas`.
 * Names that are numbers (`5th Ave`, `42 St`, `Route 9`) stay whole; what stands behind the street's comma is left out.
 */
export function streetOf(address: string): string {
  const [start = '', second = start] = address.split(',');
  const first = (ONLY_NUMBER.test(start) ? second : start).trim().replace(/\s+/g, ' ');
  const rest = first.replace(NUMBER_BEFORE, '');
  if (rest !== first && !ONLY_KIND.test(rest)) return rest;
  const before = first.replace(NUMBER_BEHIND, '');
  // a street that is only called by a number keeps it: `Calle 5`
  const isNamed = BEHIND_LAST.test(before) || (BEHIND_FIRST.test(before) && before.includes(' '));
  return isNamed ? before : first;
}
