import {
  type GroundBasis,
  type PipeForArea,
  type PriceList,
  planRoute,
  planSharedRoute,
  protectionSheet,
  type RouteRequest,
  type Site,
  sharedProtectionSheet,
} from '@rootreach/core';
import type { Args } from './args.js';
import { asAsked } from './as-asked.js';
import { CannotDo } from './cannot-do.js';
import { chosenWay } from './chosen-way.js';
import type { GivenGround } from './ground-from.js';
import { groundLine } from './print/ground-line.js';
import { json } from './print/json.js';
import type { Page } from './print/rank-table.js';
import { crewPlain, crewText, sharedCrewPlain, sharedCrewText } from './print/route-crew.js';
import { routeGeojson, sharedGeojson } from './print/route-geojson.js';
import { sharedRouteText } from './print/route-shared.js';
import { routeTable } from './print/route-table.js';
import { type SizedLine, sizingLine, tooMuchLine } from './print/sizing-line.js';
import type { RouteAsked } from './route-asked.js';
import { type Sized, sizedByRain } from './sized-by-rain.js';

export type RouteForm = 'json' | 'geojson' | 'text';

/** Everything that a route is answered from. */
export interface RouteQuestion {
  readonly args: Args;
  readonly site: Site;
  readonly asked: RouteAsked;
  readonly ground: GivenGround | null;
  readonly dated: PriceList['dated'];
  readonly form: RouteForm;
  readonly page: Page;
  /** Issues of the files, as a script reads them. */
  readonly issues: readonly object[];
}

/** The text to write, and whether there is a route at all. */
export interface RouteAnswer {
  readonly text: string;
  readonly none: boolean;
}

function groundLines(basis: GroundBasis, ground: GivenGround | null, { units }: Page): string[] {
  return basis.kind === 'none' || basis.kind === 'one-level' ? [] : [groundLine(basis, ground, units)];
}

/** What single lines were sized by, where one pipe is not enough. */
function sizingWords({ sizing }: Sized, lines: readonly SizedLine[], { units }: Page): string[] {
  return [sizingLine(sizing, units), ...lines.flatMap((line) => tooMuchLine(line, units) ?? [])];
}

/** Several sources: lines that share a main, sized downstream. */
export function sharedAnswer({
  args,
  site,
  asked,
  ground,
  dated,
  form,
  page,
  issues,
}: RouteQuestion): RouteAnswer {
  if (args.text('choose') !== undefined) throw new CannotDo('--choose goes with one --from only');
  const { request, sources } = asked;
  const sized = sizedByRain(args, site, sources, request);
  const { via: _via, from: _from, ...rest } = request;
  const from = sources.map((place, i) => ({ place, servesM2: sized.servesM2[i] ?? 0 }));
  const { pipeFor, sizing } = sized;
  const shared = { ...rest, from };
  const result = asAsked(() => planSharedRoute(site, shared, pipeFor === null ? {} : { pipeFor }));
  const none = result.none !== null;
  if (args.flag('crew') && result.route !== null) {
    const { route, asOf } = result;
    const crew = { asOf, route, sheet: sharedProtectionSheet(site, shared, route) };
    const text =
      form === 'json' ? json({ ...sharedCrewPlain(crew), issues }) : sharedCrewText(crew, site, page);
    return { none, text };
  }
  if (form === 'json') return { none, text: json({ ...result, sizing, issues }) };
  if (form === 'geojson') return { none, text: sharedGeojson(result) };
  const notes = [
    ...sizingWords(sized, result.route?.lines ?? [], page),
    ...groundLines(result.ground, ground, page),
  ];
  return { none, text: sharedRouteText(result, site, dated, notes, page) };
}

const pipeOf = ({ pipeFor, servesM2 }: Sized): PipeForArea | null => pipeFor?.(servesM2[0] ?? 0) ?? null;

/** The pipe asked for, or a larger one where the rain of an area given wants it. */
function sizedRequest({ args, site, asked }: RouteQuestion): { request: RouteRequest; sized: Sized | null } {
  const { request, sources } = asked;
  const wanted = ['rain-mm-h', 'rain-in-h'].some((name) => args.text(name) !== undefined);
  if (!wanted && args.texts('serves').length === 0) return { request, sized: null };
  const sized = sizedByRain(args, site, sources, request);
  const { sizeM } = pipeOf(sized) ?? request.pipe;
  return { request: { ...request, pipe: { ...request.pipe, sizeM } }, sized };
}

/** One source: ways side by side, or the sheet of one of them for the crew. */
export function singleAnswer(question: RouteQuestion): RouteAnswer {
  const { args, site, ground, dated, form, page, issues } = question;
  const { request, sized } = sizedRequest(question);
  const result = asAsked(() => planRoute(site, request));
  const none = result.none !== null;
  const { sizeM } = request.pipe;
  if (args.flag('crew') && !none) {
    const route = chosenWay(result.alternatives, args.text('choose'));
    const crew = { asOf: result.asOf, sizeM, route, sheet: protectionSheet(site, request, route) };
    return {
      none,
      text: form === 'json' ? json({ ...crewPlain(crew), issues }) : crewText(crew, site, page),
    };
  }
  if (form === 'json') {
    return { none, text: json({ ...result, ...(sized === null ? {} : { sizing: sized.sizing }), issues }) };
  }
  if (form === 'geojson') return { none, text: routeGeojson(result) };
  const notes = [
    ...(sized === null ? [] : sizingWords(sized, [{ id: 'The line', sized: pipeOf(sized) }], page)),
    ...groundLines(result.ground, ground, page),
  ];
  return { none, text: routeTable(result, site, dated, { sizeM, notes }, page) };
}
