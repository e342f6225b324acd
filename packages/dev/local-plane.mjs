/**
 * A flat plane at a point, x east and y north in metres, by the radii of curvature of the WGS 84 ellipsoid
 * there. Degrees come back with 8 decimals, about a millimetre, so that a branch ends on its main.
 */
export function localPlane(lon, lat) {
  const flattening = 1 / 298.257223563;
  const e2 = flattening * (2 - flattening);
  const phi = (lat * Math.PI) / 180;
  const w = Math.sqrt(1 - e2 * Math.sin(phi) ** 2);
  const metresPerLat = ((6378137 * (1 - e2)) / w ** 3) * (Math.PI / 180);
  const metresPerLon = (6378137 / w) * Math.cos(phi) * (Math.PI / 180);
  return {
    toLonLat: ([x, y]) => [
      Number((lon + x / metresPerLon).toFixed(8)),
      Number((lat + y / metresPerLat).toFixed(8)),
    ],
    toMetres: ([pointLon, pointLat]) => [(pointLon - lon) * metresPerLon, (pointLat - lat) * metresPerLat],
  };
}
