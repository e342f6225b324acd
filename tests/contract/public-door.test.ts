import type ts from 'typescript';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Exported, exportsOf, packages, programOfDoors } from './door/exports.js';
import { listed } from './door/listing.js';
import { textGaps } from './door/text-gaps.js';

describe.each(packages)('the public door of @rootreach/%s', (name) => {
  let checker: ts.TypeChecker;
  let exported: readonly Exported[];

  beforeAll(() => {
    checker = programOfDoors().getTypeChecker();
    exported = exportsOf(name);
  }, 60_000);

  it('has the names and shapes that others build on', async () => {
    expect(exported.length).toBeGreaterThan(10);
    const listing = exported.map((one) => listed(one, checker));
    await expect(`${listing.join('\n')}\n`).toMatchFileSnapshot(`public-api/${name}.txt`);
  });

  it('says of every name what it is, and of every function what goes in, what comes out, units and errors', () => {
    expect(exported.flatMap((one) => textGaps(one, checker))).toEqual([]);
  });
});
