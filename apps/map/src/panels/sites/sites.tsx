import { type DemoKey, demos } from '../../demos.js';
import { desk } from '../../keep/desk.js';
import * as keep from '../../keep/keep-state.js';
import { startBlank } from '../../keep/new-site.js';
import * as sketch from '../../sketch/sketch.js';
import * as state from '../../state.js';
import { tables } from '../../take-in/taken-files.js';
import { words } from '../../words/words.js';
import { Later } from '../later.js';
import { Bin, LastRemoved } from './bin.js';
import { LanguageChoice } from './language-choice.js';
import { SiteRow } from './site-row.js';

const w = () => words.value.keep.panel;

const loadIntake = async () => (await import('../intake/intake.js')).Intake;

function Actions() {
  return (
    <div class="site-actions">
      <button type="button" class="button button-first" onClick={() => void startBlank()}>
        {w().begin}
      </button>
      <button
        type="button"
        class="button"
        title={words.value.header.openHint}
        onClick={() => document.getElementById('open-files')?.click()}
      >
        {words.value.header.open}
      </button>
      <button
        type="button"
        class="button"
        title={w().saveHint}
        disabled={sketch.site.value === null}
        onClick={() => desk().sites.saveOpenAsFile()}
      >
        {w().saveFile}
      </button>
    </div>
  );
}

function Kept() {
  const sites = keep.keptSites.value;
  if (sites === null) return <p class="quiet">{w().cannot}</p>;
  const there = sites.filter((site) => site.deleted === null);
  if (there.length === 0) return <p>{w().nothing}</p>;
  return (
    <ul class="site-list">
      {there.map((site) => (
        <SiteRow key={site.id} site={site} />
      ))}
    </ul>
  );
}

function Examples() {
  return (
    <section class="examples" aria-labelledby="examples-title">
      <h2 id="examples-title">{w().examples}</h2>
      <p class="quiet">{w().examplesHint}</p>
      <ul class="site-list">
        {(Object.keys(demos) as DemoKey[]).map((key) => (
          <li key={key}>
            <button
              type="button"
              class="site-open"
              aria-current={state.siteKey.value === key}
              onClick={() => void desk().sites.openPicked(key)}
            >
              <span class="site-name">{words.value.header.demos[key]}</span>
              <span class="quiet">{w().exampleText[key]}</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** The sites on this device: begin, open, rename, copy, delete, save as a file. */
export function Sites() {
  return (
    <div class="sites">
      <h1 class="sites-title">{w().title}</h1>
      <Actions />
      <LastRemoved />
      {tables.value !== null && <Later load={loadIntake} />}
      <Kept />
      <Bin />
      <p class="quiet">{w().private}</p>
      <Examples />
      <LanguageChoice />
    </div>
  );
}
