import { readSite, toFeet, yearOf } from '../../core/dist/index.js';
import { contextOf } from '../../core/dist/risk/context.js';
import { rounded } from '../campus/rounded.mjs';
import { runReel } from './camera.mjs';
import { partsOf } from './draw.mjs';
import { waysInto } from './ways-in.mjs';

const NOTE = 'Invented.';
const AS_OF = '2026-11-25';
/* Nobody had a camera of his own before that. */
const FIRST_YEAR = 2006;
const LAST_YEAR = 2026;
/* Years from laying to the first look, and at least between two looks. */
const FIRST_LOOK_AFTER = 6;
const APART_YEARS = 4;

const two = (n) => String(n).padStart(2, '0');

function dayIn(year, { between }) {
  return `${year}-${two(Math.floor(between(3, 11)))}-${two(Math.floor(between(1, 29)))}`;
}

/** Days of the runs of a line: one to three, the last not long ago. */
function daysOf(installed, wanted, world) {
  const first = Math.max(FIRST_YEAR, installed + FIRST_LOOK_AFTER);
  const years = [];
  for (let year = Math.floor(world.between(first, first + 6)); year < LAST_YEAR && years.length < wanted; ) {
    years.push(year);
    year += Math.floor(world.between(APART_YEARS, APART_YEARS + 5));
  }
  return years.map((year) => dayIn(year, world));
}

/** A finding as the crew writes it: by the reel's counter, in the site's unit. */
function featureOf({ units }, id, drain, way, date, { seen, atM, fromM, toM, entries }) {
  const us = units === 'us';
  const reading = (stationM) => {
    const counter = Math.max(0, way.counterOf(stationM));
    return us ? rounded(toFeet(counter), 0.5) : rounded(counter, 0.1);
  };
  const [near, far] =
    atM === undefined ? [reading(fromM), reading(toM)].sort((a, b) => a - b) : [reading(atM)];
  const unit = us ? 'ft' : 'm';
  return {
    type: 'Feature',
    properties: {
      kind: 'finding',
      id,
      drain,
      from: way.from,
      ...(way.from === 'CO1' ? { direction: 'upstream' } : {}),
      [`at_${unit}`]: near,
      ...(far === undefined ? {} : { [`to_${unit}`]: far }),
      seen,
      ...(entries === undefined ? {} : { entries }),
      ...(seen === 'full' ? { blocked_pct: 100 } : {}),
      date,
      note: NOTE,
    },
    geometry: null,
  };
}

/** What was done to a line after a run that found roots: the day, and the drain's own record of it. */
function workOn(drainFeature, kind, day) {
  const year = Number(day.slice(0, 4)) + 1;
  drainFeature.properties[kind] = `${year}-02-15`;
  return yearOf(`${year}-02-15`);
}

function lineHistory(world, plan, id, line, main, feature) {
  const installed = line.drain.installedYear;
  const work = plan.works[id];
  const days = daysOf(feature.properties.installed, work ? 3 : world.pick([1, 2, 2, 3]), world);
  const parts = partsOf(line, installed);
  let drain = line.drain;
  let done = false;
  const told = [];
  for (const day of days) {
    const way = world.pick(waysInto(id, line, main));
    const { seen, fromM, toM } = runReel(world, { ...line, drain }, parts, way, yearOf(day));
    const say = (what) => told.push(featureOf(plan, `s-${id}-${told.length + 1}`, id, way, day, what));
    say({ seen: 'clear', fromM, toM });
    for (const finding of seen) say(finding);
    if (work && !done && day !== days[days.length - 1] && parts.some((part) => part.told !== null)) {
      const year = workOn(feature, work, day);
      drain = { ...drain, [work === 'dug' ? 'dugYear' : 'cutYear']: year };
      for (const part of parts) Object.assign(part, { since: year, told: null });
      done = true;
    }
  }
  return told;
}

/** Sends cameras along the lines of a lot over the years. Writes what was dug or cut onto the sheet's lines. */
export function tellHistory(sheet, plan, text) {
  const { site, issues } = readSite([{ name: plan.file, text }]);
  if (issues.length > 0) throw new Error(`${plan.file}: ${JSON.stringify(issues)}`);
  const context = contextOf(site, { asOf: AS_OF });
  const lineNamed = (id) => context.lines.at(site.drains.findIndex((drain) => drain.id === id));
  const world = { context, random: () => sheet.between(0, 1), between: sheet.between, pick: sheet.pick };
  return Object.keys(plan.lines).flatMap((id) => {
    const feature = sheet.features.find(
      ({ properties }) => properties.kind === 'drain' && properties.id === id,
    );
    return lineHistory(world, plan, id, lineNamed(id), lineNamed('main'), feature);
  });
}
