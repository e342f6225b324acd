import { type Pascals, pascals } from './quantity.js';

/** One pound-force per square inch in pascal (NIST SP 811, table B.8). */
const PASCALS_PER_PSI = 6894.757;

/** Pipe stiffness is quoted in psi (lbf per inch of length per inch of deflection). */
export const fromPsi = (psi: number): Pascals => pascals(psi * PASCALS_PER_PSI);
export const toPsi = (pressure: Pascals): number => pressure / PASCALS_PER_PSI;
