import ts from 'typescript';
import type { Exported } from './exports.js';
import { isPrivate } from './is-private.js';

/** A function, method or constructor that somebody outside can call. */
interface Callable {
  readonly name: string;
  readonly node: ts.SignatureDeclaration & { readonly body?: ts.Node | undefined };
}

/** Endings of names that carry their unit. */
const NAMED_UNIT = /(M|M2|M3|Mm|MPa|Years|Ratio|PerHour|Ms|M3s|Share)$/;
/** Words that say what a bare number counts or measures. */
const SAID_UNIT =
  /\b(metres?|millimetres?|centimetres?|feet|inch(es)?|gallons?|litres?|degrees?|years?|hours?|a second|station|ratio|share|counts?|how many|number|no more|row|seed|0 to 1|horizontal to vertical)\b/;

function callablesOf({ name, declaration }: Exported): Callable[] {
  if (ts.isFunctionDeclaration(declaration)) return [{ name, node: declaration }];
  if (ts.isVariableDeclaration(declaration)) {
    const { initializer } = declaration;
    return initializer && ts.isArrowFunction(initializer) ? [{ name, node: initializer }] : [];
  }
  if (!ts.isClassDeclaration(declaration)) return [];
  return declaration.members
    .filter((member) => !isPrivate(member))
    .flatMap((member): Callable[] => {
      if (ts.isConstructorDeclaration(member)) return [{ name: `new ${name}`, node: member }];
      return ts.isMethodDeclaration(member) || ts.isGetAccessor(member)
        ? [{ name: `${name}.${member.name.getText()}`, node: member }]
        : [];
    });
}

const proseOf = (node: ts.Node): string =>
  ts
    .getJSDocCommentsAndTags(node)
    .filter(ts.isJSDoc)
    .map((doc) => doc.getText())
    .join('\n');

const saidOf = (parameter: ts.ParameterDeclaration): string =>
  ts
    .getJSDocParameterTags(parameter)
    .map((tag) => ts.getTextOfJSDocComment(tag.comment) ?? '')
    .join(' ');

/** A bare number, branded or not, or a tuple of them. */
function isNumeric(type: ts.Type, checker: ts.TypeChecker): boolean {
  if (type.flags & ts.TypeFlags.NumberLike) return true;
  if (type.isUnionOrIntersection()) return type.types.some((part) => isNumeric(part, checker));
  return checker.isTupleType(type)
    ? checker.getTypeArguments(type as ts.TypeReference).some((part) => isNumeric(part, checker))
    : false;
}

const canBeMissing = (type: ts.Type): boolean =>
  type.isUnion() &&
  type.types.some((part) => (part.flags & (ts.TypeFlags.Null | ts.TypeFlags.Undefined)) !== 0);

/** What the text beside a callable leaves unsaid. */
function gapsOf({ name, node }: Callable, checker: ts.TypeChecker): string[] {
  const prose = proseOf(node);
  const gaps: string[] = [];
  if (prose === '') return [`${name}: no text`];
  for (const parameter of node.parameters) {
    const called = parameter.name.getText().replace(/\s+/g, ' ');
    const said = saidOf(parameter);
    if (node.parameters.length > 1 && said === '') gaps.push(`${name}: nothing said of ${called}`);
    const numeric = isNumeric(checker.getTypeAtLocation(parameter), checker);
    if (numeric && !NAMED_UNIT.test(called) && !SAID_UNIT.test(said || prose))
      gaps.push(`${name}: no unit for ${called}`);
  }
  const signature = checker.getSignatureFromDeclaration(node);
  const result = signature && checker.getReturnTypeOfSignature(signature);
  if (result && !ts.isConstructorDeclaration(node)) {
    if (isNumeric(result, checker) && !NAMED_UNIT.test(name) && !SAID_UNIT.test(prose))
      gaps.push(`${name}: no unit for what it returns`);
    if (canBeMissing(result) && !/\b(null|undefined)\b/.test(prose))
      gaps.push(`${name}: not said when it returns nothing`);
  }
  if (node.body && /\bthrow\b/.test(node.body.getText()) && !prose.includes('@throws'))
    gaps.push(`${name}: throws, and does not say so`);
  return gaps;
}

/** What the texts beside all that can be called of one exported name leave unsaid. */
export function textGaps(exported: Exported, checker: ts.TypeChecker): string[] {
  const text = ts.displayPartsToString(exported.symbol.getDocumentationComment(checker)).trim();
  const own = text === '' ? [`${exported.name}: no text of its own`] : [];
  return [...own, ...callablesOf(exported).flatMap((one) => gapsOf(one, checker))];
}
