import ts from 'typescript';

/** True for a member of a class that nobody outside can use. */
export const isPrivate = (node: ts.Node): boolean =>
  ts.canHaveModifiers(node) &&
  (ts.getModifiers(node) ?? []).some(({ kind }) => kind === ts.SyntaxKind.PrivateKeyword);
