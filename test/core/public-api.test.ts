import { readFileSync, writeFileSync } from 'node:fs';
import * as core from '@selvage/core';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { inRoot } from '../docs/support/pages.js';
import { checker, publicSymbols, resolved } from './public-program.js';

/*
 * public-api.txt lists every name that scripts may import, with its kind, so that a change of it is seen. UPDATE_PUBLIC_API=1 writes it anew; read the
 * difference before you keep it: a name that goes or changes its kind breaks scripts.
 */
const list = inRoot('test/core/public-api.txt');
const update = (process.env.UPDATE_PUBLIC_API ?? '') !== '';

function kindOf(symbol: ts.Symbol): 'class' | 'const' | 'function' | 'type' {
  const target = resolved(symbol);
  if (target.flags & ts.SymbolFlags.Class) return 'class';
  if (!(target.flags & ts.SymbolFlags.Value)) return 'type';
  const type = checker.getTypeOfSymbol(target);
  return type.getCallSignatures().length > 0 ? 'function' : 'const';
}

const names = publicSymbols.map((symbol) => ({ kind: kindOf(symbol), name: symbol.name }));
const byName = (a: string, b: string): number => (a < b ? -1 : 1);

describe('the public names', () => {
  it('are those of the list, of the same kinds', () => {
    const lines = names.map(({ kind, name }) => `${kind} ${name}`).sort(byName);
    if (update) writeFileSync(list, `${lines.join('\n')}\n`);
    const renewal = 'UPDATE_PUBLIC_API=1 npx vitest run test/core/public-api.test.ts';
    expect(lines, `to renew the list: ${renewal}`).toEqual(readFileSync(list, 'utf8').trimEnd().split('\n'));
  });

  it('are, but for the types, what the module exports when it runs, functions as functions', () => {
    const values = names.filter(({ kind }) => kind !== 'type').sort((a, b) => byName(a.name, b.name));
    expect(values.map(({ name }) => name)).toEqual(Object.keys(core).sort(byName));
    const running = new Map(Object.entries(core));
    for (const { kind, name } of values) {
      expect(typeof running.get(name) === 'function', name).toBe(kind !== 'const');
    }
  });
});
