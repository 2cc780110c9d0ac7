import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { inRoot } from '../docs/support/pages.js';
import { checker, publicSymbols, resolved } from './public-program.js';

const source = inRoot('packages/core/src/');

/** The text of a design is described by its JSON Schema, not by types. */
const describedElsewhere = /^design\/(?:schema\/|source\.ts$)/;

const publicNames = new Set(publicSymbols.map(resolved));

/** The file of a declaration below packages/core/src; undefined for one of another package. */
function fileOf(node: ts.Node): string | undefined {
  const { fileName } = node.getSourceFile();
  return fileName.startsWith(source) ? fileName.slice(source.length) : undefined;
}

/** Whether other files may name it at all: a helper of one file is spelled out by the type that uses it. */
const named = (node: ts.Declaration): boolean => (ts.getCombinedModifierFlags(node) & ts.ModifierFlags.Export) !== 0;

/** Every type of the library that is named within a node, by itself or by a type that it names. */
function typesIn(node: ts.Node, seen: Set<ts.Symbol>): void {
  if (ts.isTypeReferenceNode(node) || ts.isExpressionWithTypeArguments(node)) {
    const found = checker.getSymbolAtLocation(ts.isTypeReferenceNode(node) ? node.typeName : node.expression);
    const symbol = found && resolved(found);
    const declaration = symbol?.declarations?.[0];
    if (symbol && declaration && !ts.isTypeParameterDeclaration(declaration) && !seen.has(symbol)) {
      const file = fileOf(declaration);
      if (file !== undefined && !describedElsewhere.test(file)) {
        seen.add(symbol);
        declaration.forEachChild((child) => typesIn(child, seen));
      }
    }
  }
  node.forEachChild((child) => typesIn(child, seen));
}

/** The types in the signatures of the public functions. */
function signatureTypes(): Set<ts.Symbol> {
  const seen = new Set<ts.Symbol>();
  for (const declaration of [...publicNames].flatMap(({ declarations }) => declarations ?? [])) {
    const signed =
      ts.isVariableDeclaration(declaration) && declaration.initializer && ts.isArrowFunction(declaration.initializer)
        ? declaration.initializer
        : declaration;
    if (!ts.isFunctionDeclaration(signed) && !ts.isArrowFunction(signed)) continue;
    for (const node of [...signed.parameters, signed.type]) if (node) typesIn(node, seen);
  }
  return seen;
}

describe('the public names', () => {
  const types = signatureTypes();

  it('hold every type that a public function takes or gives back, and the types of their parts', () => {
    expect(types.size).toBeGreaterThan(100);
    const missing = [...types].filter(
      (symbol) => !publicNames.has(symbol) && symbol.declarations?.some(named) === true,
    );
    expect(missing.map(({ name, declarations }) => `${name} of ${fileOf(declarations![0]!)}`)).toEqual([]);
  });
});
