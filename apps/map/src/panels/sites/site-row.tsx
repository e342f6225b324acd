import { useSignal } from '@preact/signals';
import { desk } from '../../keep/desk.js';
import * as keep from '../../keep/keep-state.js';
import type { KeptSite } from '../../keep/kept-site.js';
import { words } from '../../words/words.js';
import { removeSite } from './bin.js';

const w = () => words.value.keep.panel;

function Rename({ site, done }: { readonly site: KeptSite; readonly done: () => void }) {
  const name = useSignal(site.name);
  return (
    <form
      class="site-rename"
      onSubmit={(event) => {
        event.preventDefault();
        if (name.value.trim() !== '') void desk().sites.rename(site, name.value.trim());
        done();
      }}
    >
      <label>
        {w().name}
        <input
          class="field"
          type="text"
          maxLength={200}
          value={name.value}
          ref={(input) => {
            if (input && document.activeElement !== input && !input.dataset['seen']) {
              input.dataset['seen'] = 'yes';
              input.focus();
            }
          }}
          onInput={(event) => {
            name.value = event.currentTarget.value;
          }}
        />
      </label>
      <div class="site-actions">
        <button type="submit" class="button">
          {w().keepName}
        </button>
        <button type="button" class="button" onClick={done}>
          {w().cancel}
        </button>
      </div>
    </form>
  );
}

function More({ site, rename }: { readonly site: KeptSite; readonly rename: () => void }) {
  return (
    <div class="site-actions">
      <button type="button" class="button" onClick={rename}>
        {w().rename}
      </button>
      <button type="button" class="button" onClick={() => void desk().sites.copy(site)}>
        {w().copy}
      </button>
      <button type="button" class="button" onClick={() => void removeSite(site)}>
        {w().remove}
      </button>
    </div>
  );
}

/** One site of the list: open it, and what else can be done with it. */
export function SiteRow({ site }: { readonly site: KeptSite }) {
  const shows = useSignal<'line' | 'more' | 'rename'>('line');
  const isOpen = site.id === keep.keptId.value;
  const notes = [
    w().counts(site.lines, site.trees),
    w().changed(new Date(site.changed)),
    ...(site.copyOf === null ? [] : [w().copyOf]),
  ];
  return (
    <li class="site-row">
      <div class="site-line">
        <button
          type="button"
          class="site-open"
          aria-current={isOpen}
          onClick={() => void desk().sites.openPicked(site.id)}
        >
          <span class="site-name">
            {site.name}
            {isOpen && <span class="site-now">{w().isOpen}</span>}
          </span>
          <span class="quiet">{notes.join(' · ')}</span>
        </button>
        <button
          type="button"
          class="button site-more"
          aria-label={w().more(site.name)}
          aria-expanded={shows.value !== 'line'}
          onClick={() => {
            shows.value = shows.value === 'line' ? 'more' : 'line';
          }}
        >
          {w().moreShort}
        </button>
      </div>
      {shows.value === 'more' && (
        <More
          site={site}
          rename={() => {
            shows.value = 'rename';
          }}
        />
      )}
      {shows.value === 'rename' && (
        <Rename
          site={site}
          done={() => {
            shows.value = 'line';
          }}
        />
      )}
    </li>
  );
}
