/** A fault put into one source file, and the test that must fail by it. */
export interface KnownBad {
  readonly name: string;
  /** Below packages/core/src. */
  readonly file: string;
  readonly from: string;
  readonly to: string;
  /** Below tests. */
  readonly test: string;
}

export const knownBad: readonly KnownBad[] = [
  {
    name: 'the crown is taken from the reach',
    file: 'roots/reach.ts',
    from: '+ CROWN_RATIO * crownRadius',
    to: '- CROWN_RATIO * crownRadius',
    test: 'core/roots/reach.test.ts',
  },
  {
    name: 'the trunk multiple has no cap',
    file: 'roots/protection.ts',
    from: 'Math.min(CAP_M, TRUNK_MULTIPLE * stemDiameter)',
    to: 'TRUNK_MULTIPLE * stemDiameter',
    test: 'published/bs-5837.test.ts',
  },
  {
    name: 'the kind of joint is dropped',
    file: 'risk/openings.ts',
    from: 'rates.joint * factor * place.count * depth',
    to: 'rates.joint * place.count * depth',
    test: 'core/risk/openings.test.ts',
  },
  {
    name: 'a band begins after its border',
    file: 'risk/band.ts',
    from: 'shown >= limits.act',
    to: 'shown > limits.act',
    test: 'core/risk/band.test.ts',
  },
  {
    name: 'another exponent in the formula of Manning',
    file: 'water/manning.ts',
    from: 'velocityMs = ((insideDiameter / 4) ** (2 / 3)',
    to: 'velocityMs = ((insideDiameter / 4) ** (1 / 2)',
    test: 'published/manning.test.ts',
  },
  {
    name: 'future money is worth more than present money',
    file: 'works/present-value.ts',
    from: 'amount / (1 + rate) ** yearsAhead',
    to: 'amount * (1 + rate) ** yearsAhead',
    test: 'published/present-value.test.ts',
  },
];
