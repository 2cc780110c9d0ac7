import type { Ply } from '../../material/index.js';
import { fail } from '../../problem/index.js';
import { uniqueNotes, uniqueSources } from '../../provenance/index.js';
import { entry } from '../matrix3.js';
import { shearStiffnessOf, transverseShear } from '../shear/index.js';
import { stiffness } from '../stiffness.js';
import type { Laminate } from '../types.js';
import { allenCriteria, allenStiffness } from './allen.js';
import { coreShear } from './core-shear.js';
import { type FaceStiffness, faceStiffness } from './face.js';
import { meanStress } from './face-stress.js';
import { findCore } from './find-core.js';
import { sandwichNotes } from './sandwich-notes.js';
import type {
  FaceStress,
  NoSandwich,
  Sandwich,
  SandwichCore,
  SandwichFace,
  SandwichOptions,
  Wrinkling,
} from './types.js';
import {
  deepCoreWrinklingStress,
  wrinklingCoefficientInDesign,
  wrinklingCoefficientInTheory,
  wrinklingDepth,
  wrinklingStress,
} from './wrinkling.js';

/**
 * Checks of a sandwich: wrinkling of its faces, shear of its core, and whether the hand-book assumptions hold.
 *
 * A sandwich is a stack of face, one core (of one or more plies next to each other), face. Wrinkling: σ = c (Ef Ec Gc)^(1/3), Ef the face's
 * modulus in bending. Core shear: by equilibrium. Hand-book stiffness D and Gc d²/c stand beside the shear stiffness by equal energy.
 * Each direction is judged alone: wrinkling under compression along both at once, dimpling over cells and crushing are not covered.
 *
 * @param laminate cores are the plies marked so
 * @param options coefficient more than 0; forces N/m; stresses Pa, tension positive
 * @returns the checks, or the reason why the laminate is no sandwich
 * @throws out-of-range for the coefficient; not-a-number for a force or a stress of a face; as `respond` for the load
 * @source Hoff & Mautner 1945; Allen 1969, ch. 2 and 8
 */
export function sandwichChecks(laminate: Laminate, options: SandwichOptions = {}): Sandwich | NoSandwich {
  const parts = findCore(laminate);
  if (typeof parts === 'string') {
    return { isSandwich: false, reason: parts, notes: laminate.notes, sources: laminate.sources };
  }
  const { coefficient = wrinklingCoefficientInDesign, load, shear, faceStress } = options;
  demandStress('tool', faceStress?.tool);
  demandStress('bag', faceStress?.bag);
  const core = coreOf(parts.core);
  const [tool, bag] = [faceStiffness(parts.tool), faceStiffness(parts.bag)];
  const inCore = faceStiffness(parts.core);
  const { H, notes, sources } = transverseShear(laminate);
  const count = laminate.plies.length;
  const end = parts.tool.plies.length;
  const first = count - parts.bag.plies.length;
  const stressOf = (given: FaceStress | undefined, from: number, to: number): FaceStress | undefined =>
    given ?? (load === undefined ? undefined : meanStress(laminate, load, from, to));
  const d = core.thickness + (parts.tool.thickness + parts.bag.thickness) / 2;

  const face = (
    thickness: number,
    moduli: { readonly x: FaceStiffness; readonly y: FaceStiffness },
    stress: FaceStress | undefined,
  ): SandwichFace => ({
    thickness,
    x: wrinklingOf(moduli.x.bending, core, core.Gx, nuOf(parts.core), coefficient, thickness, stress?.[0]),
    y: wrinklingOf(moduli.y.bending, core, core.Gy, nuOf(parts.core), coefficient, thickness, stress?.[1]),
  });
  const flexibility = stiffness(laminate).d;
  const along = (axis: 'x' | 'y', i: 0 | 1, Gc: number) => {
    const allen = allenStiffness(parts, [tool[axis], bag[axis]], { Ec: inCore[axis].membrane, Gc });
    return {
      allen,
      criteria: allenCriteria(parts, [tool[axis], bag[axis]], inCore[axis].membrane),
      difference: allen.D * entry(flexibility, i, i) - 1,
      H: H[i][i] ?? 0,
    };
  };
  const [x, y] = [along('x', 0, core.Gx), along('y', 1, core.Gy)];
  const checks = {
    isSandwich: true,
    core,
    d,
    tool: face(parts.tool.thickness, tool, stressOf(faceStress?.tool, 0, end)),
    bag: face(parts.bag.thickness, bag, stressOf(faceStress?.bag, first, count)),
    x,
    y,
    ...(shear === undefined
      ? {}
      : { coreShear: coreShear(laminate, shear, [x.allen.d, y.allen.d], core.shearStrength) }),
  } as const;
  return {
    ...checks,
    notes: uniqueNotes([...notes, ...sandwichNotes(checks)]),
    sources: uniqueSources(sources, ['hoff-mautner-1945', 'allen-1969']),
  };
}

function demandStress(face: string, stress: FaceStress | undefined): void {
  if (stress === undefined || (stress.length === 2 && stress.every(Number.isFinite))) return;
  fail({
    code: 'not-a-number',
    message: `the stress of the ${face} face is ${stress.join(', ')} Pa`,
    allowed: 'two finite numbers, along x and y',
  });
}

/** Modulus of a core's ply through the thickness, Pa; that of its plane, the lower one, when it gives none. */
const throughThickness = ({ E1, E2, E3 }: Ply): number => E3 ?? Math.min(E1, E2);

/** The core as one layer: plies in series for shear through the thickness, the softest for the modulus and the weakest for strength. */
function coreOf({ plies, thickness }: Laminate): SandwichCore {
  const inSeries = (of: (ply: Ply) => number): number =>
    thickness / plies.reduce((sum, ply) => sum + ply.thickness / of(ply), 0);
  const strengths = plies.flatMap((ply) => ply.shearStrength ?? ply.strengths?.S ?? []);
  return {
    thickness,
    E: Math.min(...plies.map(throughThickness)),
    modulusAssumed: plies.some(({ E3 }) => E3 === undefined),
    Gx: inSeries((ply) => shearStiffnessOf(ply)[0]),
    Gy: inSeries((ply) => shearStiffnessOf(ply)[2]),
    ...(strengths.length < plies.length ? {} : { shearStrength: Math.min(...strengths) }),
  };
}

/** The Poisson ratio of the core's plies that gives the lowest wrinkling stress. */
const nuOf = ({ plies }: Laminate): number => Math.max(...plies.map(({ nu12 }) => Math.min(nu12, 0.5)));

function wrinklingOf(
  Ef: number,
  core: SandwichCore,
  Gc: number,
  nu: number,
  coefficient: number,
  thickness: number,
  faceStress: number | undefined,
): Wrinkling {
  const moduli = { Ef, Ec: core.E, Gc };
  const stress = wrinklingStress(moduli, coefficient);
  return {
    faceModulus: Ef,
    stress,
    inTheory: wrinklingStress(moduli, wrinklingCoefficientInTheory),
    deepCore: deepCoreWrinklingStress(Ef, core.E, nu),
    depth: wrinklingDepth(moduli, thickness),
    ...(faceStress === undefined ? {} : { faceStress }),
    ...(faceStress === undefined || faceStress >= 0 ? {} : { ratio: stress / -faceStress }),
  };
}
