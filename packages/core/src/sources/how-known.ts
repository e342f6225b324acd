/**
 * How a number is known. It travels with the number into every explanation.
 * - `read`: seen in the source itself (or its abstract).
 * - `quoted`: seen in another work that quotes the source.
 * - `calculated`: worked out by us from data or a formula that was read.
 * - `memory`: remembered, not seen again; to be treated as unverified.
 * - `judgement`: our own choice, ordered and scaled by what the literature says.
 */
export type HowKnown = 'read' | 'quoted' | 'calculated' | 'memory' | 'judgement';
