import ts from 'typescript';
import type { Exported } from './exports.js';
import { isPrivate } from './is-private.js';

const printer = ts.createPrinter({ removeComments: true });
const WHOLE = ts.TypeFormatFlags.NoTruncation;

function signatureOf(node: ts.SignatureDeclaration, checker: ts.TypeChecker): string {
  const signature = checker.getSignatureFromDeclaration(node);
  return signature ? checker.signatureToString(signature, node, WHOLE) : '';
}

/** A class by what can be called from outside. */
function membersOf(declaration: ts.ClassDeclaration, checker: ts.TypeChecker): string[] {
  return declaration.members
    .filter((member) => !isPrivate(member))
    .flatMap((member) => {
      if (ts.isConstructorDeclaration(member)) {
        const fields = member.parameters
          .filter((one) => ts.isParameterPropertyDeclaration(one, member) && !isPrivate(one))
          .map((one) => `  ${one.getText()}`);
        return [`  new ${signatureOf(member, checker)}`, ...fields];
      }
      const name = member.name?.getText() ?? '';
      if (ts.isMethodDeclaration(member)) return [`  ${name}${signatureOf(member, checker)}`];
      return [`  ${name}: ${checker.typeToString(checker.getTypeAtLocation(member), member, WHOLE)}`];
    });
}

/** One exported name with its kind, and its shape without comments. */
export function listed({ name, declaration }: Exported, checker: ts.TypeChecker): string {
  if (ts.isFunctionDeclaration(declaration)) return `function ${name}${signatureOf(declaration, checker)}`;
  if (ts.isClassDeclaration(declaration)) {
    return [`class ${name} {`, ...membersOf(declaration, checker), '}'].join('\n');
  }
  if (ts.isVariableDeclaration(declaration)) {
    const { initializer, type } = declaration;
    if (initializer && ts.isArrowFunction(initializer))
      return `function ${name}${signatureOf(initializer, checker)}`;
    if (type) return `const ${name}: ${type.getText()}`;
    // a table by its keys: its values are data, held by tests of their own
    const keys = checker.getTypeAtLocation(declaration).getProperties();
    const shape = checker.getTypeAtLocation(declaration);
    return shape.flags & ts.TypeFlags.Object
      ? `const ${name}: { ${keys.map((key) => key.name).join(', ')} }`
      : `const ${name}: ${checker.typeToString(checker.getBaseTypeOfLiteralType(shape))}`;
  }
  const text = printer.printNode(ts.EmitHint.Unspecified, declaration, declaration.getSourceFile());
  return text.replace(/^export /, '');
}
