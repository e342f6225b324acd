import type { PriceIssue } from '../model/prices.js';

/** What is wrong with a line of a price list, and what was done about it. */
export function wordPriceIssue(issue: PriceIssue): string {
  switch (issue.code) {
    case 'nothing-in-it':
      return 'there is no price in it';
    case 'no-such-column':
      return `there is no column '${issue.column}'; nothing was read`;
    case 'no-code':
      return 'no code; left out';
    case 'unknown-item':
      return `nothing is priced by the code '${issue.item}': a slip of the pen?`;
    case 'bad-price':
      return `${issue.item}: '${issue.got}' is no price; left out`;
    case 'bad-unit':
      return `${issue.item}: '${issue.got}' is no unit (m, m2, m3, ft, ft2, yd2, ft3, yd3, ton, piece, hour, job); left out`;
    case 'bad-date':
      return `${issue.item}: '${issue.got}' is no date; taken without one`;
    case 'listed-twice':
      return `${issue.item} stands in line ${issue.firstLine} already; left out`;
    case 'other-currency':
      return `${issue.item} is in ${issue.got}, unlike the rest; left out`;
  }
}
