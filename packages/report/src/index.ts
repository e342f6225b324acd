/** @rootreach/report: plain results to pictures, charts and self-contained pages. */
export {};
