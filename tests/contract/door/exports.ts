import { join } from 'node:path';
import ts from 'typescript';
import { root } from '../../house/source-files.js';

/** Packages that others build on, each with one door. */
export const packages = ['core', 'intake', 'report'] as const;
export type PackageName = (typeof packages)[number];

const doorOf = (name: PackageName): string => join(root, 'packages', name, 'src', 'index.ts');

let shared: ts.Program | undefined;

/** The sources of all three packages, read once. */
export function programOfDoors(): ts.Program {
  shared ??= ts.createProgram(packages.map(doorOf), {
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.NodeNext,
    moduleResolution: ts.ModuleResolutionKind.NodeNext,
    lib: ['lib.es2023.d.ts'],
    strict: true,
    exactOptionalPropertyTypes: true,
    skipLibCheck: true,
    customConditions: ['rootreach-source'],
    types: [],
    noEmit: true,
  });
  return shared;
}

/** One name that a package exports, with the symbol that it stands for. */
export interface Exported {
  readonly name: string;
  readonly symbol: ts.Symbol;
  readonly declaration: ts.Declaration;
}

/** All that a package exports, by name. */
export function exportsOf(name: PackageName): Exported[] {
  const program = programOfDoors();
  const checker = program.getTypeChecker();
  const door = program.getSourceFile(doorOf(name));
  const module = door && checker.getSymbolAtLocation(door);
  if (!module) throw new Error(`no door at ${doorOf(name)}`);
  return checker
    .getExportsOfModule(module)
    .map((given) => {
      const symbol = given.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(given) : given;
      const declaration = symbol.declarations?.[0];
      if (!declaration) throw new Error(`${given.name} of ${name} is declared nowhere`);
      return { name: given.name, symbol, declaration };
    })
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}
