import { emptySection, firstIntegral, sectionAt } from './elastica-section.js';
import { type NaturalArm, type PeelModel, pull } from './peel-model.js';
import { noForce } from './row-stages.js';

/** A point's values: height, angle, moment, force along y. All forces are upright: the tail bears none, and both arms are alike. */
const [Y, ANGLE, M, V] = [0, 1, 2, 3] as const;
const size = 4;

/** Half of a T-peel with two arms alike, above the plane of the bond. */
export function symmetricPeel(arm: NaturalArm): PeelModel {
  const { bend } = arm.section;
  const { liftByMoment, liftByForce, turnByMoment } = arm.bed;
  const section = emptySection();
  const sum = noForce();
  const one = noForce();
  const value = (z: ArrayLike<number>, i: number): number => z[i] ?? 0;

  return {
    size,
    arms: [arm],
    places: [{ y: Y, angle: ANGLE, moment: M, V }],
    problem: (drive, holding) => ({
      size,
      left: 'release' in drive ? 3 : 2,
      slope(z, at, f, J) {
        sectionAt(arm.section, value(z, at + ANGLE), 0, value(z, at + V), section);
        f[Y] = section.dy;
        f[ANGLE] = bend * value(z, at + M);
        f[M] = section.dM;
        J[Y * size + ANGLE] = section.dyByAngle;
        J[Y * size + V] = section.dyByV;
        J[ANGLE * size + M] = bend;
        J[M * size + ANGLE] = section.dMByAngle;
        J[M * size + V] = section.dMByV;
      },
      jump(point, z, J) {
        const rows = holding[point];
        if (rows === undefined || rows.length === 0) return false;
        pull(rows, 2 * value(z, Y), sum, one);
        z[V] = value(z, V) + sum.force;
        J[V * size + Y] = 2 * sum.slope;
        return true;
      },
      first(z, at, r, J) {
        const [m, q] = [value(z, at + M), value(z, at + V)];
        r[0] = value(z, at + Y) - liftByMoment * m - liftByForce * q;
        J[Y] = 1;
        J[M] = -liftByMoment;
        J[V] = -liftByForce;
        r[1] = value(z, at + ANGLE) - turnByMoment * m - liftByMoment * q;
        J[size + ANGLE] = 1;
        J[size + M] = -turnByMoment;
        J[size + V] = -liftByMoment;
        if (!('release' in drive)) return;
        // Two arms release the energy.
        sectionAt(arm.section, value(z, at + ANGLE), 0, q, section);
        r[2] = 2 * firstIntegral(bend, m, 0, q, section) - drive.release;
        J[2 * size + M] = 2 * bend * m;
        J[2 * size + ANGLE] = -2 * section.dM;
        J[2 * size + V] = 2 * section.dy;
      },
      last(z, at, r, J) {
        r[0] = value(z, at + M);
        J[M] = 1;
        if (!('displacement' in drive)) return;
        r[1] = 2 * value(z, at + Y) - drive.displacement;
        J[size + Y] = 2;
      },
    }),
    gap: (z, point) => 2 * value(z, point * size + Y),
    reading(z) {
      const at = z.length - size;
      const load = value(z, at + V);
      sectionAt(arm.section, value(z, at + ANGLE), 0, load, section);
      const byLoad = 2 * firstIntegral(bend, 0, 0, load, section);
      const [m, q] = [value(z, M), value(z, V)];
      sectionAt(arm.section, value(z, ANGLE), 0, q, section);
      return {
        release: 2 * firstIntegral(bend, m, 0, q, section) * (value(z, Y) < 0 ? -1 : 1),
        load,
        displacement: 2 * value(z, at + Y),
        byLoad,
        bedEnergy: m * value(z, ANGLE) + q * value(z, Y),
      };
    },
    guess(release, length, at) {
      const moment = Math.sqrt(release / bend);
      const force = moment / length;
      const z = new Float64Array(at.length * size);
      at.forEach((s, k) => {
        z[k * size + Y] = bend * force * ((s * s * length) / 2 - s ** 3 / 6);
        z[k * size + ANGLE] = bend * force * (s * length - (s * s) / 2);
        z[k * size + M] = force * (length - s);
        z[k * size + V] = force;
      });
      return z;
    },
  };
}
