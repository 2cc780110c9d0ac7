import { fail } from '../problem/index.js';

/** Three components x, y, xy, of which some are left open by `null`. */
export type Components = readonly [number | null, number | null, number | null];

/**
 * What acts on a laminate. Each of the six components of the load is given either as a force or as a deformation;
 * what is given as neither is a force of 0.
 */
export interface Load {
  /** Force per length, N/m. */
  readonly N?: Components;
  /** Moment per length, N. */
  readonly M?: Components;
  /** Mid-plane strain, engineering shear strain. */
  readonly strain?: Components;
  /** Curvature, 1/m; xy is the engineering twist, -2 ∂²w/∂x∂y. */
  readonly curvature?: Components;
  /** Uniform change of temperature from the stress-free state, K. */
  readonly temperatureChange?: number;
  /** Change of temperature per height, K/m, on top of the uniform one: zero at the mid-plane, positive hotter at the bag side. */
  readonly temperatureGradient?: number;
  /** Moisture taken up, mass of water per mass of ply: for all plies alike, or one number per ply. */
  readonly moisture?: number | readonly number[];
}

/** The six components with each one known from one side: `deformation[i]` is null where `force[i]` holds. */
export interface SixComponents {
  /** Nx, Ny, Nxy (N/m), Mx, My, Mxy (N). */
  readonly force: readonly number[];
  /** εx, εy, γxy, κx, κy, κxy (1/m). */
  readonly deformation: readonly (number | null)[];
}

const names = ['x', 'y', 'xy'] as const;

/**
 * Sorts a load into the six components that are prescribed as force and as deformation.
 *
 * @throws contradiction when a component is given both ways; not-a-number when a value is not finite; wrong-type when there are not three
 */
export function sixComponents(load: Load): SixComponents {
  const force = [...read('N', load.N), ...read('M', load.M)];
  const deformation = [...read('strain', load.strain), ...read('curvature', load.curvature)];
  force.forEach((value, i) => {
    if (value === null || deformation[i] === null) return;
    const [forceName, shapeName] = i < 3 ? ['N', 'strain'] : ['M', 'curvature'];
    fail({
      code: 'contradiction',
      message: `the load gives both ${forceName} = ${value} and ${shapeName} = ${deformation[i]} for the component ${names[i % 3]}`,
      allowed: 'one of the two per component',
      hint: `put null in the place of the one that shall follow from the other`,
    });
  });
  return { force: force.map((value) => value ?? 0), deformation };
}

function read(name: string, components: Components | undefined): (number | null)[] {
  if (components !== undefined) demandThree(name, components);
  const [x, y, xy] = components ?? [null, null, null];
  [x, y, xy].forEach((value, i) => {
    if (value !== null && !Number.isFinite(value)) {
      fail({ code: 'not-a-number', message: `${name} ${names[i]} is ${value}`, allowed: 'a finite number, or null' });
    }
  });
  return [x, y, xy];
}

/** Refuses anything but a list of three. @throws wrong-type */
export function demandThree(name: string, components: unknown): void {
  if (Array.isArray(components) && components.length === 3) return;
  fail({
    code: 'wrong-type',
    message: `${name} is ${Array.isArray(components) ? `a list of ${components.length}` : components}`,
    allowed: 'a list of three: x, y, xy',
  });
}
