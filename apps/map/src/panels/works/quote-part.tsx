import type { ChoiceId } from '@rootreach/core';
import { type QuoteOption, type QuoteResult, quoteCsv } from '@rootreach/core';
import { words } from '../../words/words.js';
import { handOver } from '../../works/hand-over.js';
import { setPrice } from '../../works/price-list.js';
import { choiceWords } from './choice-card.js';

const w = () => words.value.works;

const nameOf = ({ id, name }: QuoteOption): string => choiceWords().names[id as ChoiceId] ?? name;

function Item({ item }: { readonly item: QuoteOption['items'][number] }) {
  const name = w().itemName(item.code, item.text);
  return (
    <tbody>
      <tr>
        <th scope="rowgroup" colSpan={3}>
          {name}
        </th>
      </tr>
      <tr>
        <td class="number">
          {item.quantity} {w().unit(item.unit)}
        </td>
        <td>
          <input
            class="entry works-price"
            inputMode="decimal"
            aria-label={w().priceOf(name)}
            value={item.price ?? ''}
            onChange={({ currentTarget }) => {
              const typed = currentTarget.value.trim().replace(',', '.');
              if (/^\d+(\.\d+)?$/.test(typed)) setPrice(item.code, typed);
              else currentTarget.value = item.price ?? '';
            }}
          />
        </td>
        <td class="number">{item.total ?? '–'}</td>
      </tr>
    </tbody>
  );
}

function OptionTable({ option, currency }: { readonly option: QuoteOption; readonly currency: string }) {
  return (
    <details class="works-part">
      <summary>
        {nameOf(option)}: {w().exact(option.total, currency)}
      </summary>
      {option.missing.length > 0 && <p class="known">{w().missing(option.missing.length)}</p>}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than a phone is scrolled by keys */}
      <section class="route-table offer" tabIndex={0} aria-label={nameOf(option)}>
        <table>
          <thead>
            <tr>
              <th scope="col">{w().quantity}</th>
              <th scope="col">{w().price}</th>
              <th scope="col">{w().total}</th>
            </tr>
          </thead>
          {option.items.map((item) => (
            <Item key={`${item.code} ${item.text}`} item={item} />
          ))}
          <tfoot>
            {(['subtotal', 'margin', 'tax', 'total'] as const).map((sum) => (
              <tr key={sum}>
                <th scope="row" colSpan={2}>
                  {w()[sum]}
                </th>
                <td class="number">{w().exact(option[sum], currency)}</td>
              </tr>
            ))}
          </tfoot>
        </table>
      </section>
    </details>
  );
}

/** Up to three offers with their items; every price can be changed where it stands. */
export function QuotePart({ quote }: { readonly quote: QuoteResult }) {
  if (quote.options.length === 0) return null;
  return (
    <section class="works-section">
      <h2>{w().quote}</h2>
      {quote.options.map((option) => (
        <OptionTable key={option.id} option={option} currency={quote.currency} />
      ))}
      <button type="button" class="button" onClick={() => handOver('offer.csv', quoteCsv(quote), 'text/csv')}>
        {w().saveQuote}
      </button>
    </section>
  );
}
