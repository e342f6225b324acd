/** @rootreach/intake: other people's files to GeoJSON that the core reads. */
export {};
