import ts from 'typescript';
import { inRoot } from '../docs/support/pages.js';

const entry = inRoot('packages/core/src/index.ts');

const program = ts.createProgram([entry], {
  target: ts.ScriptTarget.ES2022,
  module: ts.ModuleKind.ESNext,
  moduleResolution: ts.ModuleResolutionKind.Bundler,
  customConditions: ['@selvage/source'],
  resolveJsonModule: true,
  skipLibCheck: true,
  strict: true,
  types: [],
});

/** Of the sources of the core. */
export const checker = program.getTypeChecker();

/** What a name stands for in the end, through every file that passes it on. */
export const resolved = (symbol: ts.Symbol): ts.Symbol =>
  (symbol.flags & ts.SymbolFlags.Alias) === 0 ? symbol : checker.getAliasedSymbol(symbol);

/** The names that the core exports, as its users see them. */
export const publicSymbols: readonly ts.Symbol[] = checker.getExportsOfModule(
  checker.getSymbolAtLocation(program.getSourceFile(entry)!)!,
);
