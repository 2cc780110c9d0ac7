import { armOf, type LaminateArm } from '../../src/fracture/index.js';
import { laminate } from '../../src/laminate/index.js';
import { entryValues, library, ply } from '../../src/material/index.js';
import type { Thread } from '../../src/stitch/index.js';
import { entry } from './inputs.js';

/** A value that an entry of the library must give. */
function needed(values: Readonly<Record<string, number | undefined>>, id: string, name: string): number {
  const value = values[name];
  if (value === undefined) throw new Error(`${id} gives no ${name}`);
  return value;
}

/** E1, G12 and nu12 of a ply of the library. */
export function wavyPly(id: string): { readonly E1: number; readonly G12: number; readonly nu12: number } {
  const values = entryValues(entry(library.plies, id));
  const of = (name: string) => needed(values, id, name);
  return { E1: of('E1'), G12: of('G12'), nu12: of('nu12') };
}

/** An arm of one ply of the library, fibres along the beam, as a narrow strip that breaks with its fibres. */
export function armOfPly(id: string, thickness: number): LaminateArm {
  const values = entryValues(entry(library.plies, id));
  const of = (name: string) => needed(values, id, name);
  const strengths = { Xt: of('Xt'), Xc: of('Xc'), Yt: of('Yt'), Yc: of('Yc'), S: of('S') };
  const one = ply({ name: id, thickness, E1: of('E1'), E2: of('E2'), G12: of('G12'), nu12: of('nu12'), strengths });
  return armOf(laminate([one]), { across: 'free', breaking: 'fibres' });
}

/** A thread of the library. */
export function threadOf(id: string): Thread {
  const values = entryValues(entry(library.threads, id));
  const of = (name: string) => needed(values, id, name);
  return {
    name: id,
    linearDensity: of('linearDensity'),
    density: of('density'),
    tenacity: of('tenacity'),
    modulus: of('modulus'),
  };
}

/** Modulus and strength of a rod: fibres of the library side by side, the resin between them left out. */
export function rodFibre(id: string): {
  readonly density: number;
  readonly modulus: number;
  readonly tenacity: number;
} {
  const values = entryValues(entry(library.threads, id));
  const of = (name: string) => needed(values, id, name);
  return { density: of('density'), modulus: of('modulus'), tenacity: of('tenacity') };
}
