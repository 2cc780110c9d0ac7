import { describe, expect, it } from 'vitest';
import { deflected } from '../../../../packages/core/src/stitch/bridging/ploughing.js';
import { openingAt } from '../../../../packages/core/src/stitch/bridging/slip.js';
import {
  type BridgingModel,
  bridgingLaw,
  lawOf,
  openingWork,
  type PathLaw,
} from '../../../../packages/core/src/stitch/index.js';
import { expectNear, mm } from '../support.js';
import { modelOf, penetration, plain, side } from './support.js';

const along = (model: BridgingModel, angle: number) => lawOf(model, { angle }) as PathLaw;

/** A string under tension stepped along its length from where it leaves the straight hole, turning by q ds/S, until it lies at an angle. */
function steppedString(
  tension: number,
  q: number,
  angle: number,
): { readonly sideways: number; readonly drawn: number } {
  const steps = 20_000;
  const ds = (angle * tension) / q / steps;
  let [x, y, turned] = [0, 0, 0];
  for (let i = 0; i < steps; i++) {
    const middle = turned + (q * ds) / tension / 2;
    x += ds * Math.cos(middle);
    y += ds * Math.sin(middle);
    turned += (q * ds) / tension;
  }
  return { sideways: y, drawn: steps * ds - x };
}

describe('a thread that a sliding crack drags through the laminate', () => {
  it('lies as a string in a bed stepped along its length, with unlike beds and a gap', () => {
    const [q, other, tension] = [8e4, 3e4, 100];
    for (const angle of [0.05, 0.4, 1.2]) {
      for (const w of [0, 0.05 * mm]) {
        const [a, b] = [steppedString(tension, q, angle), steppedString(tension, other, angle)];
        const u = a.sideways + b.sideways + w * Math.tan(angle);
        const found = deflected(1 / q + 1 / other, tension, w, u);
        expectNear(found.angle, angle, 1e-6);
        expectNear(found.drawn, a.drawn + b.drawn + w / Math.cos(angle), 1e-6);
      }
    }
  });

  it('lies in the parabola of small slopes at first: slope u/l, l^2 = S u/q, drawn out u^2/(3 l) on both sides', () => {
    const [S, q, u] = [100, 8e4, 1e-6];
    const l = Math.sqrt((S * u) / q);
    const { angle, drawn } = deflected(2 / q, S, 0, u);
    expectNear(angle, u / l, 1e-3);
    expectNear(drawn, (4 / 3) * ((u / 2) ** 2 / l), 1e-3);
    // Flatter still, where x - sin x would lose its figures.
    const flat = deflected(2 / q, S, 0, u * 1e-4);
    expectNear(flat.angle, (u / l) * 1e-2, 1e-5);
    expectNear(flat.drawn, (4 / 3) * ((u / 2) ** 2 / l) * 1e-6, 1e-5);
  });

  it('ploughs in the plane of the crack once the crack has slid further than the tension can bend it', () => {
    const { angle, drawn } = deflected(2 / 8e4, 10, 0, 1 * mm);
    expect(angle).toBe(Math.PI / 2);
    expectNear(drawn, 1 * mm - (10 * 2 * (2 - Math.PI / 2)) / 8e4);
  });
});

describe('the law along other paths than pure opening', () => {
  it('lets out what is drawn, at every state before it gives way', () => {
    for (const angle of [10, 45, 80, 90]) {
      const model = modelOf({ depth: 1 * mm });
      const { states, peak } = along(model, angle);
      const breaks = states.findIndex(({ tension }) => tension >= 150 + side.slipResistance * 1 * mm - 1e-9);
      expect(breaks).toBeGreaterThan(10);
      expect(peak.force).toBeGreaterThan(0);
      for (const { tension, opening, sliding } of states.slice(1, breaks)) {
        const bed = 2 / side.lateralResistance;
        expectNear(openingAt(model, tension), deflected(bed, tension, opening, sliding).drawn, 1e-6);
      }
    }
  });

  it('has the work of sliding that integrating the tractions in steps of tension gives, up to rupture', () => {
    const model = modelOf({}, {}, { crackStrength: 100 });
    const { work } = along(model, 90);
    // Without pull-out: the angle at each tension from drawn = e(S) by halving, T_s du summed.
    const reach = (S: number) => (2 * S) / side.lateralResistance;
    let [sum, lastU, lastT] = [0, 0, 0];
    for (let k = 1; k <= 4000; k++) {
      const S = k / 40;
      let [low, high] = [0, Math.PI / 2];
      for (let i = 0; i < 60; i++) {
        const middle = (low + high) / 2;
        if (reach(S) * (middle - Math.sin(middle)) < openingAt(model, S)) low = middle;
        else high = middle;
      }
      const u = reach(S) * (1 - Math.cos(low));
      const T = S * Math.sin(low);
      sum += ((T + lastT) / 2) * (u - lastU);
      [lastU, lastT] = [u, T];
    }
    expectNear(work, sum, 1e-3);
  });

  it('is the law of opening at 0 degrees, and goes over from opening to sliding without a jump', () => {
    const model = modelOf({}, {}, { siteScatter: 0.15 });
    expectNear(along(model, 0).work, openingWork(model), 2e-4);
    expectNear(along(model, 1e-3).work, openingWork(model), 2e-4);
    let last = along(model, 0).work;
    for (let angle = 5; angle <= 90; angle += 5) {
      const { work } = along(model, angle);
      expect(work).toBeGreaterThan(last * (1 - 1e-4));
      expect(work).toBeLessThan(1.35 * last);
      last = work;
    }
    expectNear(along(model, 89.9999).work, last, 1e-3);
  });

  it('ends when the leg that pulls out has slipped by its depth', () => {
    for (const angle of [20, 90]) {
      const { opening, states, force } = along(modelOf({ depth: 1 * mm }, { depth: 4 * mm }), angle);
      const breaks = states.findIndex(({ tension }) => tension >= 150 + side.slipResistance * 1 * mm - 1e-9);
      const { opening: w, sliding: u } = states[breaks]!;
      expectNear(opening.at(-1)!, Math.hypot(w, u) + 1 * mm, 1e-9);
      expect(force.at(-1)).toBeCloseTo(0, 6);
      expect(force.at(-2)).toBeGreaterThan(0);
    }
  });

  it('takes more work to slide than to open and hardly depends on the bearing pressure', () => {
    const at = (bearingPressure: number) =>
      bridgingLaw(penetration({ parameters: { ...plain, bearingPressure } })).work;
    const sliding = (bearingPressure: number) =>
      bridgingLaw({ ...penetration({ parameters: { ...plain, bearingPressure } }), path: { angle: 90 } }).work;
    expect(at(100e6)).toBe(at(400e6));
    expect(sliding(200e6)).toBeGreaterThan(at(200e6));
    expect(Math.abs(sliding(400e6) / sliding(100e6) - 1)).toBeLessThan(0.2);
  });

  it('follows a history with corners, and along a straight one agrees with the path at an angle', () => {
    const input = penetration();
    const straight = bridgingLaw({ ...input, path: { angle: 30 } });
    const end = straight.opening.at(-1)!;
    const [c, s] = [Math.cos(Math.PI / 6), Math.sin(Math.PI / 6)];
    const history = Array.from({ length: 4000 }, (_, i) => {
      const length = end * ((i + 1) / 4000) ** 2;
      return { opening: length * c, sliding: length * s };
    });
    expectNear(bridgingLaw({ ...input, path: { history } }).work, straight.work, 1e-3);
    const corner = bridgingLaw({
      ...input,
      path: {
        history: [
          { opening: 2e-5, sliding: 0 },
          { opening: 2e-5, sliding: 2e-5 },
        ],
      },
    });
    expect(corner.states.at(-1)?.shear).toBeGreaterThan(0);
    expect(corner.notes.map((note) => note.text)).toContainEqual(expect.stringContaining('still holds'));
  });

  it('warns when the thread bends over more than its depth before it breaks', () => {
    const soft = modelOf({ depth: 0.3 * mm }, {}, { crackStrength: 150 });
    const sides = soft.sides.map((one) => ({ ...one, lateralResistance: 2e4 })) as unknown as BridgingModel['sides'];
    expect(lawOf({ ...soft, sides }, { angle: 90 }).notes[0]?.text).toContain('bends over more than its depth');
    expect(along(modelOf(), 90).notes).toEqual([]);
  });
});
