/** @rootreach/core: where tree roots threaten a buried drain line, why, and how sure that is. */

export { adviceFor, reasonFor } from './explain/advice.js';
export { wordAssumption } from './explain/assumption-words.js';
export { wordCaution } from './explain/caution-words.js';
export { bandMeaning, tensOf, wordChance } from './explain/chance-words.js';
export { wordGroundBasis } from './explain/ground-words.js';
export { wordIssue } from './explain/issue-words.js';
export {
  type LineField,
  type MissingInput,
  missingInputs,
  type TreeField,
} from './explain/missing-inputs.js';
export { wordPriceIssue } from './explain/price-issue-words.js';
export { protectionSheet, sharedProtectionSheet } from './explain/protection-sheet.js';
export {
  type SheetLine,
  type SheetNumbers,
  type SheetSection,
  wordHarmReason,
  wordProtectionSheet,
} from './explain/protection-words.js';
export { type LengthWriter, wordReach } from './explain/reach-words.js';
export { type WaterNumbers, wordWaterGap, wordWaterWarning } from './explain/water-words.js';
export { type BoxIndex, type IndexRoom, indexAround as treeIndex } from './geometry/box-index.js';
export type { Interval } from './geometry/intervals.js';
export { type Circle, stretchesInside } from './geometry/overlap.js';
export { lonLatOf, type Plane, planeFor, xOf, yOf } from './geometry/plane.js';
export { nearestOn, type Polyline, polylineOf } from './geometry/polyline.js';
export {
  type Backtest,
  backtestBySite,
  backtestByTime,
  type RankingScore,
  type SiteRecord,
} from './learn/backtest.js';
export type { CalibrationBin } from './learn/calibration.js';
export { type Item, itemsOf } from './learn/items.js';
export { learn, observe } from './learn/learn.js';
export type { Lift } from './learn/lift.js';
export { readLearnedModel } from './learn/model-file.js';
export type { Caution, CautionConditions } from './model/caution.js';
export type { Bedding, Dig, DigFitting, DigSurface } from './model/dig.js';
export type { Factor } from './model/factor.js';
export type * from './model/fall.js';
export type * from './model/ground.js';
export type { Assumption, Issue, IssueCode, IssueDetail, Misplaced, Place, Severity } from './model/issue.js';
export type { LearnedGroup, LearnedModel } from './model/learned.js';
export type * from './model/network.js';
export type * from './model/network-fall.js';
export type * from './model/pipe-for-area.js';
export type * from './model/prices.js';
export type * from './model/protection-sheet.js';
export type { Quantity, QuantityUnit } from './model/quantity.js';
export type * from './model/quote.js';
export type * from './model/result.js';
export type * from './model/route.js';
export type * from './model/season.js';
export type * from './model/shared-route.js';
export type * from './model/site.js';
export type { MaterialMatch, SpeciesMatch } from './model/species-match.js';
export type * from './model/tree-harm.js';
export type * from './model/water-result.js';
export type * from './model/works.js';
export { isNotALiveTree } from './names/not-live.js';
export { resolveMaterial } from './names/resolve-material.js';
export { resolveSpecies } from './names/resolve-species.js';
export { type SpeciesName, speciesNames } from './names/species-names.js';
export { type CsvCell, csvText } from './prices/csv.js';
export { demoPrices } from './prices/demo-prices.js';
export { priceQuantities } from './prices/price-quantities.js';
export { readPriceList } from './prices/read-price-list.js';
export { writePriceList } from './prices/write-price-list.js';
export type { QuantityOptions } from './quantities/options.js';
export { outsideDiameterM } from './quantities/outside-diameter.js';
export { quantitiesOf } from './quantities/quantities-of.js';
export { trenchVolumeM3 } from './quantities/trench-volume.js';
export { fullTrenchWidthM } from './quantities/trench-width.js';
export type { TextInput } from './read/parse-json.js';
export { textOf } from './read/text-of.js';
export { assumptionsOf } from './risk/assumptions.js';
export { cautionsFor } from './risk/cautions.js';
export type { RankOptions } from './risk/context.js';
export { factorsOf } from './risk/factors.js';
export { modelFingerprint } from './risk/fingerprint.js';
export { chanceOf } from './risk/interval.js';
export type { Observation } from './risk/observed.js';
export { type OddsPoint, oddsOverYears } from './risk/odds-over-years.js';
export { bandLimits, rank } from './risk/rank.js';
export { type RescoreOptions, Rescorer } from './risk/rescorer.js';
export { closedFormChance, type ScoreColumns } from './risk/score-all.js';
export { type LineDetail, ScoredSite } from './risk/scored-site.js';
export { type Box, SiteView, type Stretch } from './risk/site-view.js';
export { rootDensity } from './roots/density.js';
export { GLOBAL_BETA, shareBelow, trenchDepthFactor } from './roots/depth.js';
export { type Relation, relations } from './roots/relations.js';
export { type AdoptedFeature, type AdoptOptions, adoptRoute } from './route/adopt-route.js';
export { adoptShared } from './route/adopt-shared.js';
export { evaluateRoute } from './route/evaluate-route.js';
export { type PlanOptions, planRoute } from './route/plan-route.js';
export { planSharedRoute, type SharedRouteOptions } from './route/shared-route.js';
export { bibliography, type SourceKey } from './sources/bibliography.js';
export type { Cited } from './sources/cited.js';
export type { HowKnown } from './sources/how-known.js';
export { type CautionCode, type CautionLanguage, type CautionRow, cautionTable } from './tables/cautions.js';
export { jointRow } from './tables/joints.js';
export { type Judged, judgement } from './tables/judgement.js';
export type { JointKey, JointRow, MaterialKey, PipeRow, PipeSize } from './tables/pipe-row.js';
export { pipeRow } from './tables/pipes.js';
export { type RunoffRow, runoffTable, type SurfaceKey } from './tables/runoff.js';
export { speciesRow } from './tables/species.js';
export type { CrownEquation, SpeciesRow, TreeForm, VigourClass, WaterDemand } from './tables/species-row.js';
export { type TownStreets, townByStreet } from './town/by-street.js';
export { type TownLift, townLift } from './town/lift.js';
export { drainIds, type TownDrains } from './town/packed-drains.js';
export { type SegmentSpan, segmentSpans } from './town/segment-spans.js';
export { type TownCell, townByCell, townByMaterial, townBySpecies } from './town/summary.js';
export type { TownPart } from './town/sums.js';
export {
  type GrowOptions,
  joinBlocks,
  joinTown,
  packPiece,
  scoredTown,
  siteOfTown,
  type Town,
  type TownBlock,
  type TownPiece,
  townScorer,
} from './town/town.js';
export { yearOf } from './units/calendar.js';
export { fromInchesPerHour, toGallonsPerMinute, toInchesPerHour, toLitresPerSecond } from './units/flow.js';
export {
  fromCentimetres,
  fromFeet,
  fromInches,
  fromMillimetres,
  fromSquareFeet,
  toCentimetres,
  toFeet,
  toInches,
  toMillimetres,
  toSquareFeet,
} from './units/length.js';
export type { Metres, Pascals, Years } from './units/quantity.js';
export { guessKind } from './validate/columns.js';
export { type NamedQuantity, quantities } from './validate/quantity-names.js';
export { readSite, type SiteReading } from './validate/read-site.js';
export { type FeatureKind, siteFileSchemas } from './validate/schemas.js';
export { SiteReader } from './validate/site-reader.js';
export { manningFull, manningPartial, type PipeFlow } from './water/manning.js';
export { type AreaBasis, pipeForArea } from './water/pipe-for-area.js';
export { pipesByRain } from './water/pipes-by-rain.js';
export { rainLookUp } from './water/rain-look-up.js';
export { type WaterOptions, waterOf } from './water/water.js';
export { choiceName, wordReasons } from './works/choice-words.js';
export { decide } from './works/decide.js';
export type { DecideOptions, NewRoute } from './works/options.js';
export { quoteCsv } from './works/quote-csv.js';
export { type Offer, offersOfChoices, offersOfRoutes, type QuoteOptions, quoteOf } from './works/quote-of.js';
export { seasonCsv } from './works/season-csv.js';
export { seasonIcs } from './works/season-ics.js';
export { type SeasonOptions, type SeasonSite, seasonOf } from './works/season-of.js';
export { wordLook } from './works/season-words.js';
export type { WorkRequest } from './works/stretch.js';
export { workStretch } from './works/work-stretch.js';
