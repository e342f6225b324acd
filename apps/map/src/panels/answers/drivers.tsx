import type { Driver, SegmentResult } from '@rootreach/core';
import { words } from '../../words/words.js';

/** What would change a stretch's score, each worked out anew; the strongest first. */
export function Drivers({ segment }: { readonly segment: SegmentResult }) {
  const w = words.value.answers.drivers;
  const drivers: readonly Driver[] = [...segment.drivers].sort((a, b) => a.scoreWithout - b.scoreWithout);
  return (
    <section aria-labelledby="drivers-title">
      <h2 id="drivers-title">{w.title}</h2>
      {drivers.length === 0 && <p>{w.none}</p>}
      <ul class="plain">
        {drivers.map((driver) => (
          <li key={`${driver.code}/${driver.tree}`} class={`driver ink-${segment.band}`}>
            <span>{w.change(driver)}</span>
            <span class="number" aria-hidden="true">
              {w.fall(segment.score, driver.scoreWithout)}
            </span>
            <span class="unseen">{w.said(segment.score, driver.scoreWithout)}</span>
            <span class="fall" aria-hidden="true">
              <i class="fall-from" style={{ width: `${segment.score}%` }} />
              <i class="fall-to" style={{ width: `${driver.scoreWithout}%` }} />
            </span>
          </li>
        ))}
      </ul>
      {drivers.length > 0 && <p class="quiet">{w.basis}</p>}
    </section>
  );
}
