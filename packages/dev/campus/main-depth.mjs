/**
 * A main falls by getting deeper towards its outlet: metres from the ground to the top of the pipe, by the share
 * of the way down.
 */
export const mainDepth = (carries, share) => (carries === 'foul' ? 1.2 + 1.3 * share : 1.1 + 0.9 * share);
