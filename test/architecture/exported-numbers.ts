import * as ts from 'typescript';

/** A number that a file of `rules/` shows to others: a parameter, a property, a constant or what a function returns. */
export interface ExportedNumber {
  readonly name: string;
  readonly file: string;
  readonly line: number;
}

/**
 * Every number that the given files export, whether alone, optional, in a list or as the values of a record.
 *
 * @param program - A program that holds the files.
 * @param belongs - Which of its files to look at.
 */
export function exportedNumbers(program: ts.Program, belongs: (file: string) => boolean): ExportedNumber[] {
  const checker = program.getTypeChecker();
  const found: ExportedNumber[] = [];
  for (const source of program.getSourceFiles()) {
    if (!belongs(source.fileName)) continue;
    for (const statement of source.statements) {
      if (!isExported(statement)) continue;
      for (const name of numbersIn(statement, checker)) {
        const { line } = source.getLineAndCharacterOfPosition(name.getStart(source));
        found.push({ name: name.getText(source), file: source.fileName, line: line + 1 });
      }
    }
  }
  return found;
}

function isExported(statement: ts.Statement): boolean {
  return (
    ts.canHaveModifiers(statement) &&
    (ts.getModifiers(statement) ?? []).some((modifier) => modifier.kind === ts.SyntaxKind.ExportKeyword)
  );
}

/** The names below an exported statement that stand for numbers. Bodies of functions are private and left out. */
function* numbersIn(node: ts.Node, checker: ts.TypeChecker): Generator<ts.Node> {
  if (ts.isBlock(node) || isPrivate(node)) return;
  const name = ownName(node, checker);
  if (name !== undefined && holdsNumber(typeOf(node, checker), checker)) yield name;
  for (const child of children(node)) yield* numbersIn(child, checker);
}

function isPrivate(node: ts.Node): boolean {
  return (ts.getCombinedModifierFlags(node as ts.Declaration) & ts.ModifierFlags.Private) !== 0;
}

function children(node: ts.Node): ts.Node[] {
  const nodes: ts.Node[] = [];
  ts.forEachChild(node, (child) => {
    nodes.push(child);
  });
  return nodes;
}

function ownName(node: ts.Node, checker: ts.TypeChecker): ts.Node | undefined {
  // A property of a literal whose type is declared elsewhere is named there.
  if (ts.isPropertyAssignment(node) && checker.getContextualType(node.parent) !== undefined) return undefined;
  const named =
    ts.isFunctionDeclaration(node) ||
    ts.isVariableDeclaration(node) ||
    ts.isParameter(node) ||
    ts.isPropertySignature(node) ||
    ts.isPropertyDeclaration(node) ||
    ts.isMethodSignature(node) ||
    ts.isMethodDeclaration(node) ||
    ts.isNamedTupleMember(node) ||
    ts.isPropertyAssignment(node);
  return named && node.name !== undefined && ts.isIdentifier(node.name) ? node.name : undefined;
}

function typeOf(node: ts.Node, checker: ts.TypeChecker): ts.Type {
  const type = checker.getTypeAtLocation(node);
  const call = type.getCallSignatures()[0];
  return call === undefined ? type : call.getReturnType();
}

function holdsNumber(type: ts.Type, checker: ts.TypeChecker): boolean {
  const parts = (type.isUnion() ? type.types : [type]).filter(
    (part) => (part.flags & (ts.TypeFlags.Undefined | ts.TypeFlags.Null)) === 0,
  );
  return parts.length > 0 && parts.every((part) => isNumberOrNumbers(part, checker));
}

function isNumberOrNumbers(type: ts.Type, checker: ts.TypeChecker): boolean {
  if ((type.flags & ts.TypeFlags.NumberLike) !== 0 || type.symbol?.name === 'Float64Array') return true;
  if (checker.isArrayType(type) || checker.isTupleType(type)) {
    // The members of a labelled tuple have names of their own.
    const labels = ((type as ts.TypeReference).target as ts.TupleType).labeledElementDeclarations ?? [];
    if (labels.some((label) => label !== undefined)) return false;
    const items = checker.getTypeArguments(type as ts.TypeReference);
    return items.length > 0 && items.every((item) => holdsNumber(item, checker));
  }
  return valuesOf(type, checker).some((value) => holdsNumber(value, checker));
}

/** Types of the values of a record or a map; of other types none, since their properties have names of their own. */
function valuesOf(type: ts.Type, checker: ts.TypeChecker): ts.Type[] {
  if (/^(?:Readonly)?Map$/.test(type.symbol?.name ?? '')) {
    return checker.getTypeArguments(type as ts.TypeReference).slice(1);
  }
  const indexed = type.getStringIndexType();
  if (indexed !== undefined) return [indexed];
  const plain = type.aliasSymbol?.name === 'Readonly' ? type.aliasTypeArguments?.[0] : type;
  const value = plain?.aliasSymbol?.name === 'Record' ? plain.aliasTypeArguments?.[1] : undefined;
  return value === undefined ? [] : [value];
}
