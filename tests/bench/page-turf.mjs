// Bundled for the page bench only: a full re-score's overlap step through Turf, in the page that is measured.
import { overlapTurf } from './overlap-turf.mjs';

/** Circles of 12 trunk diameters, 15 m at most, on every tree of a collection, against every line. */
globalThis.scoreThroughTurf = (collection) => {
  const of = (kind) => collection.features.filter((f) => f.properties.kind === kind);
  const trees = of('tree').map((f) => ({
    position: f.geometry.coordinates,
    radiusM: Math.min(15, 0.12 * f.properties.dbh_cm),
  }));
  return overlapTurf(
    trees,
    of('drain').map((f) => f.geometry.coordinates),
  );
};
