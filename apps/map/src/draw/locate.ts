import type { LonLat } from '@rootreach/core';

/** Longest wait for the device's position, and age of one that will do, milliseconds. */
const ASKING = { enableHighAccuracy: true, timeout: 20_000, maximumAge: 10_000 };

/** Asks the device where it is, once. Called on a tap only. Null where it does not say. */
export function locate(): Promise<{ readonly at: LonLat; readonly withinM: number } | null> {
  return new Promise((done) => {
    if (!('geolocation' in navigator)) {
      done(null);
      return;
    }
    navigator.geolocation.getCurrentPosition(
      ({ coords }) => done({ at: [coords.longitude, coords.latitude], withinM: coords.accuracy }),
      () => done(null),
      ASKING,
    );
  });
}
