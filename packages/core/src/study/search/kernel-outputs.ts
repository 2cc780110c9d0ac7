import type { DesignInputs, Model } from '../../design/index.js';
import { type Criterion, failureCriteria, layout } from '../../laminate/index.js';
import type { Ply } from '../../material/index.js';

/** Where a quantity of a candidate comes from. */
export type KernelOutput =
  /** A number of the kernel's row. */
  | { readonly from: 'row'; readonly offset: number }
  /** Strength ratio under a load by a criterion. */
  | { readonly from: 'ratio'; readonly load: string; readonly criterion: Criterion }
  /** A mass that adds up over the layers. */
  | { readonly from: 'sum'; readonly mass: LayerMass }
  /** The same for every candidate. */
  | { readonly from: 'constant' };

export type LayerMass = 'arealMass' | 'fibreArealMass' | 'resinArealMass';

/** Place of entry i, j among 11, 12, 16, 22, 26, 66. */
const packed = [0, 1, 2, 1, 3, 4, 2, 4, 5];
const symmetric: Readonly<Record<string, number>> = { A: layout.A, B: layout.B, D: layout.D, a: layout.a, d: layout.d };
const constants = ['Ex', 'Ey', 'Gxy', 'nuxy', 'nuyx', 'etaxyx', 'etaxyy'];
const masses: readonly LayerMass[] = ['arealMass', 'fibreArealMass', 'resinArealMass'];

/** A number of a laminate, by the names below it in the JSON report. */
function ofLaminate([name = '', second = '', third = '', ...rest]: readonly string[]): KernelOutput | undefined {
  if (rest.length > 0) return undefined;
  const row = (offset: number): KernelOutput => ({ from: 'row', offset });
  if (third === '') {
    if (name === 'thickness' && second === '') return row(layout.thickness);
    if (name === 'condition' && second === '') return row(layout.condition);
    const mass = masses.find((one) => one === name && second === '');
    if (mass !== undefined) return { from: 'sum', mass };
    const place = constants.indexOf(second);
    return place >= 0 && (name === 'inPlane' || name === 'flexural') ? row(layout[name] + place) : undefined;
  }
  if (!/^[012]$/.test(second) || !/^[012]$/.test(third)) return undefined;
  const entry = 3 * Number(second) + Number(third);
  if (name === 'b') return row(layout.b + entry);
  const block = Object.hasOwn(symmetric, name) ? symmetric[name] : undefined;
  return block === undefined ? undefined : row(block + (packed[entry] ?? 0));
}

/** Whether a load is made of forces and a change of temperature alone. */
const isPlainLoad = ({ strain, curvature, temperatureGradient, moisture }: Model['loads'][number]): boolean =>
  strain === undefined && curvature === undefined && temperatureGradient === undefined && moisture === undefined;

/** Where each quantity comes from when only the stack of a laminate varies; undefined when one needs the whole design. */
export function kernelOutputs(
  { design }: DesignInputs,
  loads: Model['loads'],
  laminate: string,
  quantities: readonly string[],
): readonly KernelOutput[] | undefined {
  const outputs = quantities.map((path): KernelOutput | undefined => {
    const [section, name = '', ...rest] = path.split('.');
    if (section === 'laminates') {
      if (name === laminate) return ofLaminate(rest);
      return Object.hasOwn(design.laminates, name) ? { from: 'constant' } : undefined;
    }
    const load = section === 'loads' ? loads.find((one) => one.name === name) : undefined;
    if (load === undefined) return undefined;
    if (load.laminate !== laminate) return { from: 'constant' };
    const [failure, named, ratio, ...more] = rest;
    const criterion = failureCriteria.find((one) => one === named);
    const known = failure === 'failure' && ratio === 'ratio' && more.length === 0 && isPlainLoad(load);
    return known && criterion !== undefined ? { from: 'ratio', load: name, criterion } : undefined;
  });
  return outputs.every((one) => one !== undefined) ? outputs : undefined;
}

/** The mass that a layer brings, kg/m²; undefined when it is not known. */
export function massOf(ply: Ply, mass: LayerMass): number | undefined {
  if (mass === 'arealMass') return ply.density === undefined ? undefined : ply.density * ply.thickness;
  const own = mass === 'fibreArealMass' ? ply.fibreArealMass : ply.resinArealMass;
  return own ?? (ply.core === true ? 0 : undefined);
}
