import {
  type Criterion,
  envelopeOf,
  type FailureEnvelope,
  type Laminate,
  type Load,
  type LoadComponent,
  loadComponents,
  type Response,
  type SolvedLoad,
  type StrengthOptions,
  solvePlane,
} from '../../laminate/index.js';
import { surroundingsOf } from './load-of.js';

/** Envelopes of first-ply failure by several criteria in the plane of two components of a load, and where the load stands in it. */
export interface LoadEnvelope {
  readonly components: readonly [LoadComponent, LoadComponent];
  /** The load's own two components, N/m or N; reactions where deformation is prescribed, those of heat and moisture included. */
  readonly load: { readonly x: number; readonly y: number };
  /** Further components of the load, which the envelope takes as zero. */
  readonly others: readonly LoadComponent[];
  /** Whether heat or moisture make reactions, since a deformation is prescribed: then the load does not grow from the origin. */
  readonly held: boolean;
  readonly envelopes: readonly FailureEnvelope[];
}

/** The six components of a response by name; zero without one. */
function componentsOf(response: Pick<Response, 'N' | 'M'> | undefined): Record<LoadComponent, number> {
  const { N, M } = response ?? { N: [0, 0, 0], M: [0, 0, 0] };
  return { Nx: N[0], Ny: N[1], Nxy: N[2], Mx: M[0], My: M[1], Mxy: M[2] };
}

/** Sizes that compare: a force times the thickness is of the size of a moment. */
const sizeOf =
  (values: Record<LoadComponent, number>, thickness: number) =>
  (name: LoadComponent): number =>
    Math.abs(values[name]) * (name.startsWith('N') ? thickness : 1);

/** What a component that works alone is shown against. */
const partner: Readonly<Record<LoadComponent, LoadComponent>> = {
  Nx: 'Ny',
  Ny: 'Nx',
  Nxy: 'Nx',
  Mx: 'My',
  My: 'Mx',
  Mxy: 'Mx',
};

/** The first two components at work, in the order Nx, Ny, Nxy, Mx, My, Mxy; a single one with its partner. */
function planeOf(atWork: readonly LoadComponent[]): readonly [LoadComponent, LoadComponent] {
  const [first = 'Nx', second = partner[first]] = atWork;
  return loadComponents.indexOf(first) < loadComponents.indexOf(second) ? [first, second] : [second, first];
}

/**
 * Envelopes around a load case.
 * @param chosen components that the design asks for; those at work when undefined
 * @throws not-computable when a component stresses no ply that has strengths; as the criterion's options
 */
export function loadEnvelope(
  laminate: Laminate,
  load: Load,
  solved: SolvedLoad,
  choices: {
    readonly components: readonly [LoadComponent, LoadComponent] | undefined;
    readonly criteria: readonly Criterion[];
    readonly options: StrengthOptions;
  },
): LoadEnvelope {
  const mechanical = componentsOf(solved.mechanical);
  const reactions = componentsOf(solved.residual);
  const size = sizeOf(mechanical, laminate.thickness);
  const noise = 1e-9 * Math.max(...loadComponents.map(size));
  const atWork = loadComponents.filter((name) => size(name) > noise);
  const held = loadComponents.filter((name) => sizeOf(reactions, laminate.thickness)(name) > noise);
  const components = choices.components ?? planeOf(atWork);
  const plane = solvePlane(laminate, components, surroundingsOf(load));
  const [x, y] = [
    mechanical[components[0]] + reactions[components[0]],
    mechanical[components[1]] + reactions[components[1]],
  ];
  return {
    components,
    load: { x, y },
    others: loadComponents.filter(
      (name) => (atWork.includes(name) || held.includes(name)) && !components.includes(name),
    ),
    held: held.length > 0,
    envelopes: choices.criteria.map((criterion) => envelopeOf(laminate, plane, { ...choices.options, criterion })),
  };
}
