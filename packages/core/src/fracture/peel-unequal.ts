import { ANGLE, armSlope, emptySection, firstIntegral, H, M, perArm, sectionAt, V, X, Y } from './elastica-section.js';
import { type NaturalArm, type PeelModel, pull } from './peel-model.js';
import { noForce } from './row-stages.js';

/** Each arm has y away from the bond, so that both obey the same equations; the lower arm's y and V change sign where the two meet. */
const each = perArm;
const size = 2 * each;

/** A T-peel with two arms, seen from the bonded part behind the front, which is free to turn. */
export function unequalPeel(upper: NaturalArm, lower: NaturalArm): PeelModel {
  const arms = [upper, lower] as const;
  const section = emptySection();
  const sum = noForce();
  const one = noForce();
  const value = (z: ArrayLike<number>, i: number): number => z[i] ?? 0;
  const across = (z: ArrayLike<number>, at: number): number => value(z, at + X) - value(z, at + each + X);
  const apart = (z: ArrayLike<number>, at: number): number => value(z, at + Y) + value(z, at + each + Y);

  return {
    size,
    arms,
    places: [0, each].map((o) => ({ y: o + Y, angle: o + ANGLE, moment: o + M, H: o + H, V: o + V })),
    problem: (drive, holding) => ({
      size,
      left: 'release' in drive ? 7 : 6,
      slope(z, at, f, J) {
        arms.forEach((arm, k) => {
          armSlope(arm.section, z, at, k * each, size, f, J, section);
        });
      },
      jump(point, z, J) {
        const rows = holding[point];
        if (rows === undefined || rows.length === 0) return false;
        const dx = across(z, 0);
        const dy = apart(z, 0);
        const gap = Math.hypot(dx, dy);
        if (gap === 0) return false;
        pull(rows, gap, sum, one);
        const [ex, ey] = [dx / gap, dy / gap];
        const { force, slope } = sum;
        // Derivatives of force times direction by dx and dy.
        const stiff = force / gap;
        const xx = slope * ex * ex + stiff * ey * ey;
        const xy = (slope - stiff) * ex * ey;
        const yy = slope * ey * ey + stiff * ex * ex;
        for (const [o, sign] of [
          [0, 1],
          [each, -1],
        ] as const) {
          z[o + H] = value(z, o + H) + sign * force * ex;
          z[o + V] = value(z, o + V) + force * ey;
          const h = (o + H) * size;
          const v = (o + V) * size;
          J[h + X] = sign * xx;
          J[h + each + X] = -sign * xx;
          J[h + Y] = sign * xy;
          J[h + each + Y] = sign * xy;
          J[v + X] = xy;
          J[v + each + X] = -xy;
          J[v + Y] = yy;
          J[v + each + Y] = yy;
        }
        return true;
      },
      first(z, at, r, J) {
        let released = 0;
        arms.forEach(({ section: compliance, bed }, k) => {
          const o = k * each;
          const [m, q] = [value(z, at + o + M), value(z, at + o + V)];
          const row = (i: number): number => (3 * k + i) * size + o;
          r[3 * k] = value(z, at + o + X);
          J[row(0) + X] = 1;
          r[3 * k + 1] = value(z, at + o + Y) - bed.liftByMoment * m - bed.liftByForce * q;
          J[row(1) + Y] = 1;
          J[row(1) + M] = -bed.liftByMoment;
          J[row(1) + V] = -bed.liftByForce;
          r[3 * k + 2] = value(z, at + o + ANGLE) - bed.turnByMoment * m - bed.liftByMoment * q;
          J[row(2) + ANGLE] = 1;
          J[row(2) + M] = -bed.turnByMoment;
          J[row(2) + V] = -bed.liftByMoment;
          if (!('release' in drive)) return;
          // The root moves along the tail as the front does: what the force does on that way is not released.
          const h = value(z, at + o + H);
          sectionAt(compliance, value(z, at + o + ANGLE), h, q, section);
          released += firstIntegral(compliance.bend, m, h, q, section) - h;
          const last = 6 * size + o;
          J[last + ANGLE] = -section.dM;
          J[last + M] = compliance.bend * m;
          J[last + H] = section.dx - 1;
          J[last + V] = section.dy;
        });
        if ('release' in drive) r[6] = released - drive.release;
      },
      last(z, at, r, J) {
        r[0] = value(z, at + M);
        J[M] = 1;
        r[1] = value(z, at + each + M);
        J[size + each + M] = 1;
        r[2] = value(z, at + H) + value(z, at + each + H);
        J[2 * size + H] = 1;
        J[2 * size + each + H] = 1;
        r[3] = value(z, at + V) - value(z, at + each + V);
        J[3 * size + V] = 1;
        J[3 * size + each + V] = -1;
        const row = 4 * size;
        const dx = across(z, at);
        // Nothing turns the tail: the force runs along the line of the grips.
        const dy = apart(z, at);
        const [h, v] = [value(z, at + H), value(z, at + V)];
        r[4] = h * dy - v * dx;
        J[row + H] = dy;
        J[row + V] = -dx;
        J[row + Y] = h;
        J[row + each + Y] = h;
        J[row + X] = -v;
        J[row + each + X] = v;
        if (!('displacement' in drive)) return;
        const distance = Math.hypot(dx, dy);
        r[5] = distance - drive.displacement;
        J[5 * size + X] = dx / distance;
        J[5 * size + each + X] = -dx / distance;
        J[5 * size + Y] = dy / distance;
        J[5 * size + each + Y] = dy / distance;
      },
    }),
    gap: (z, point) => Math.hypot(across(z, point * size), apart(z, point * size)),
    reading(z) {
      const at = z.length - size;
      const dx = across(z, at);
      const dy = apart(z, at);
      const displacement = Math.hypot(dx, dy);
      let [byLoad, bedEnergy, released] = [0, 0, 0];
      arms.forEach(({ section: compliance }, k) => {
        const o = k * each;
        const h = value(z, at + o + H);
        sectionAt(compliance, value(z, at + o + ANGLE), h, value(z, at + o + V), section);
        byLoad += firstIntegral(compliance.bend, 0, h, value(z, at + o + V), section) - h;
        const [rootH, rootV] = [value(z, o + H), value(z, o + V)];
        sectionAt(compliance, value(z, o + ANGLE), rootH, rootV, section);
        released += firstIntegral(compliance.bend, value(z, o + M), rootH, rootV, section) - rootH;
        bedEnergy += (value(z, o + M) * value(z, o + ANGLE) + value(z, o + V) * value(z, o + Y)) / 2;
      });
      const load = displacement > 0 ? (value(z, at + H) * dx + value(z, at + V) * dy) / displacement : 0;
      return { release: apart(z, 0) < 0 ? -released : released, load, displacement, byLoad, bedEnergy };
    },
    guess(release, length, at) {
      // Both arms bear the same force, so the same moment.
      const moment = Math.sqrt((2 * release) / (upper.section.bend + lower.section.bend));
      const force = moment / length;
      const z = new Float64Array(at.length * size);
      at.forEach((s, k) => {
        arms.forEach(({ section: { bend } }, i) => {
          const o = k * size + i * each;
          z[o + X] = s;
          z[o + Y] = bend * force * ((s * s * length) / 2 - s ** 3 / 6);
          z[o + ANGLE] = bend * force * (s * length - (s * s) / 2);
          z[o + M] = force * (length - s);
          z[o + V] = force;
        });
      });
      return z;
    },
  };
}
