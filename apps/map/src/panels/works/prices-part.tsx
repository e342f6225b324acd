import { useSignal } from '@preact/signals';
import { words } from '../../words/words.js';
import { handOver } from '../../works/hand-over.js';
import {
  changedPrices,
  forgetPrices,
  ownPrices,
  priceFile,
  priceIssues,
  priceList,
  priceTerms,
  setTerms,
  takePrices,
} from '../../works/price-list.js';
import { assume, mostNow } from '../../works/works-state.js';
import { NumberInput } from './number-input.js';

const w = () => words.value.works;

const shareOf = (percent: number | null): number => (percent ?? 0) / 100;

/** Years, interest, margin and tax: what the reckoning rests on. */
export function AssumptionsPart() {
  const terms = priceTerms.value;
  const rate = assume.value['discount-rate'];
  const set = (key: 'horizon-years' | 'discount-rate', value: number | null) => {
    const { [key]: _, ...rest } = assume.value;
    assume.value = value === null ? rest : { ...rest, [key]: value };
  };
  return (
    <details class="works-part">
      <summary>{w().assumptions}</summary>
      <div class="works-numbers">
        <NumberInput
          label={w().horizon}
          value={assume.value['horizon-years'] ?? null}
          least={1}
          most={50}
          step={1}
          set={(value) => set('horizon-years', value)}
        />
        <NumberInput
          label={w().rate}
          value={rate === undefined ? null : Math.round(rate * 1000) / 10}
          least={0}
          most={30}
          step={0.1}
          set={(value) => set('discount-rate', value === null ? null : value / 100)}
        />
        <NumberInput
          label={w().most}
          value={mostNow.value}
          least={0}
          most={1e7}
          step={100}
          set={(value) => {
            mostNow.value = value;
          }}
        />
        <NumberInput
          label={w().margin}
          value={Math.round(terms.margin * 1000) / 10}
          least={0}
          most={100}
          step={0.5}
          set={(value) => setTerms({ ...terms, margin: shareOf(value) })}
        />
        <NumberInput
          label={w().tax}
          value={Math.round(terms.tax * 1000) / 10}
          least={0}
          most={100}
          step={0.1}
          set={(value) => setTerms({ ...terms, tax: shareOf(value) })}
        />
      </div>
    </details>
  );
}

/** The firm's own price list, or the invented one. */
export function PricesPart() {
  const wrong = useSignal(false);
  const { rows, dated } = priceList.value;
  const when = dated === null ? null : dated.from === dated.to ? dated.from : `${dated.from} – ${dated.to}`;
  return (
    <details class="works-part">
      <summary>{w().prices}</summary>
      <p>
        {ownPrices.value
          ? w().pricesOwn(rows.length, when)
          : changedPrices.value
            ? w().pricesChanged
            : w().pricesDemo}
      </p>
      {wrong.value && <p class="known">{w().badPrices}</p>}
      {priceIssues.value.length > 0 && <p class="quiet">{w().badRows(priceIssues.value.length)}</p>}
      <div class="works-buttons">
        <label class="button">
          {w().loadPrices}
          <input
            class="unseen"
            type="file"
            accept=".csv,text/csv"
            onChange={async (event) => {
              const input = event.currentTarget;
              const file = input.files?.[0];
              if (file) wrong.value = !takePrices(await file.text());
              input.value = '';
            }}
          />
        </label>
        <button type="button" class="button" onClick={() => handOver('prices.csv', priceFile(), 'text/csv')}>
          {w().savePrices}
        </button>
        {changedPrices.value && (
          <button type="button" class="button" onClick={forgetPrices}>
            {w().dropPrices}
          </button>
        )}
      </div>
    </details>
  );
}
