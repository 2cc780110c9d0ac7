import {
  engineeringConstants,
  laminate,
  makeQbarTable,
  moistureExpansionOf,
  respond,
  stiffness,
  thermalExpansionOf,
} from '../laminate/index.js';
import { reducedStiffness } from '../material/index.js';
import { type Given, type GivenVector, type PlyInputs, plyAt, si, siVector, unitPly } from './inputs.js';
import { named, namedMatrix, namedVector } from './names.js';
import type { ComputedValues } from './types.js';

/** Stiffness and compliance of a ply in its own axes, and its strains under stress. */
export function plyStiffness({ ply, stress }: { ply: PlyInputs; stress: GivenVector }): ComputedValues {
  const one = unitPly(ply);
  const s = stiffness(one);
  return {
    ...namedMatrix('S', s.a),
    ...onAxisStiffness(ply),
    nu21: engineeringConstants(s).inPlane.nuyx,
    ...namedVector(['eps1', 'eps2', 'gamma12'], respond(one, { N: siVector(stress, 'stress') }).strain),
  };
}

function onAxisStiffness(ply: PlyInputs): ComputedValues {
  const [Q11, Q12, Q22, Q66] = reducedStiffness(plyAt(ply, 0, 1));
  return { Q11, Q12, Q22, Q66 };
}

/** Ply stiffness in its own axes and at each of the angles. */
export function offAxisStiffness({ ply, angles }: { ply: PlyInputs; angles: readonly number[] }): ComputedValues {
  const table = makeQbarTable([plyAt(ply, 0, 1)], angles);
  const perAngle = table.length / angles.length;
  return Object.assign(
    onAxisStiffness(ply),
    ...angles.map((angle, i) => named(`${angle}.Qbar`, table, i * perAngle)),
  ) as ComputedValues;
}

/** Ply compliance in its own axes and at the angle. */
export function offAxisCompliance({ ply, angle }: { ply: PlyInputs; angle: number }): ComputedValues {
  return {
    ...namedMatrix('S', stiffness(unitPly(ply)).a),
    ...namedMatrix('Sbar', stiffness(unitPly(ply, angle)).a),
  };
}

/** Engineering constants of a ply at the angle; the coupling factors are mx = -Sbar16 E1 and my = -Sbar26 E1. */
export function offAxisPlyConstants({ ply, angle }: { ply: PlyInputs; angle: number }): ComputedValues {
  const { Ex, Ey, Gxy, nuxy, etaxyx, etaxyy } = engineeringConstants(stiffness(unitPly(ply, angle))).inPlane;
  const E1 = si(ply.E1, 'modulus');
  return { Ex, Ey, Gxy, nuxy, mx: (-etaxyx * E1) / Ex, my: (-etaxyy * E1) / Ey };
}

interface OffAxisExpansion {
  readonly ply: PlyInputs;
  readonly angle: number;
  readonly temperatureChange: Given;
  readonly moistureChange: number;
}

/** Expansion of a ply seen from axes at an angle, and its free strains in its own. */
export function offAxisExpansion({ ply, angle, temperatureChange, moistureChange }: OffAxisExpansion): ComputedValues {
  const one = unitPly(ply, angle);
  const free = respond(one, {
    temperatureChange: si(temperatureChange, 'temperatureChange'),
    moisture: moistureChange,
  }).plies[0]?.middle.strain12;
  return {
    ...namedVector(['alphax', 'alphay', 'alphaxy'], thermalExpansionOf(one).strain),
    ...namedVector(['betax', 'betay', 'betaxy'], moistureExpansionOf(one).strain),
    ...(free === undefined ? {} : { eps1Free: free[0], eps2Free: free[1] }),
  };
}

/** Constants of a quasi-isotropic laminate of the ply, here [0/60/-60]s. */
export function quasiIsotropic({ ply }: { ply: PlyInputs }): ComputedValues {
  const plies = [0, 60, -60, -60, 60, 0].map((angle) => plyAt(ply, angle, 1));
  const { Ex, nuxy, Gxy } = engineeringConstants(stiffness(laminate(plies))).inPlane;
  return { E: Ex, nu: nuxy, G: Gxy };
}
