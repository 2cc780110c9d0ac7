import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deflected } from '../../../../packages/core/src/stitch/bridging/ploughing.js';
import { openingAt } from '../../../../packages/core/src/stitch/bridging/slip.js';
import {
  type BridgingParameters,
  type BridgingSide,
  bridgingInterval,
  bridgingLaw,
  bridgingModel,
  lawOf,
  openingWork,
  type PathLaw,
  type PenetrationInput,
  stitchType,
  type YieldingBend,
} from '../../../../packages/core/src/stitch/index.js';
import { codesOf, expectNear, mm } from '../support.js';
import { aramid, modelOf, penetration, plain, side } from './support.js';

const { beddingIn, ...bending } = plain;
const pitch = 5 * mm;

/** The stitch of the other tests with bends that yield. */
const soft = (parameters: Partial<BridgingParameters> = {}, rest: Partial<PenetrationInput> = {}) =>
  penetration({ bends: 'yielding', pitch, parameters: { ...bending, ...parameters }, ...rest });

const bend: YieldingBend = {
  from: 40,
  to: 120,
  compliance: 2e-6,
  passed: 0.6,
  float: { length: 2.5 * mm, axialStiffness: 7500, slipResistance: 7e3 },
};

/** Tension along a thread with friction, stepped from one end: what is left at the other and the length let out. */
function stepped(tension: number, q: number, EA: number, length: number): { left: number; out: number } {
  const steps = 20_000;
  const dx = length / steps;
  let [left, out] = [tension, 0];
  for (let i = 0; i < steps && left > 0; i++) {
    const next = Math.max(0, left - q * dx);
    out += (((left + next) / 2) * dx) / EA;
    left = next;
  }
  return { left, out };
}

/** Length that a string saves by turning through a right angle in a bed of q per length instead of around a corner, stepped along it. */
function savedAtCorner(tension: number, q: number): number {
  const steps = 20_000;
  const turn = Math.PI / 2 / steps;
  const ds = (turn * tension) / q;
  let [x, y] = [0, 0];
  for (let i = 0; i < steps; i++) {
    x += ds * Math.cos((i + 0.5) * turn);
    y += ds * Math.sin((i + 0.5) * turn);
  }
  return x + y - steps * ds;
}

/** Force that friction around a quarter turn leaves, stepped. */
function aroundBend(force: number, friction: number): number {
  let left = force;
  for (let i = 0; i < 20_000; i++) left -= (friction * left * Math.PI) / 2 / 20_000;
  return left;
}

describe('a bend over a face that yields', () => {
  it('lets go what leg, corner and thread on the face give when each is stepped along by itself', () => {
    const { model } = bridgingModel(soft({ bendRadius: 0.5 }));
    const d = Math.sqrt((4 * aramid.linearDensity) / (Math.PI * aramid.density * 0.65));
    const EA = aramid.linearDensity * 50e6;
    // Of one leg on the face: 1.8 x 200 MPa on 0.92 diameters; held along half its perimeter by 7 MPa.
    const resistance = 1.8 * 200e6 * 0.92 * d;
    const grip = 0.5 * 7e6 * Math.PI * d;
    for (const force of [30, 80, 160]) {
      const leg = stepped(force, 7e6 * (Math.PI + 2) * d, 2 * EA, 1.5 * mm);
      const each = leg.left / 2;
      const cured = savedAtCorner(resistance * 0.5 * d, resistance);
      const corner = Math.max(0, savedAtCorner(each, resistance) - cured);
      const float = stepped(aroundBend(each, 0.3), grip, EA, pitch / 2).out;
      expectNear(openingAt(model, force), 2 * (leg.out + corner + float), 2e-4);
    }
  });

  it('has an area that is the closed-form work to 1e-4, wherever it begins to yield, finds no room or slips to the middle', () => {
    const legs: Partial<BridgingSide>[] = [
      { bend },
      { bend: { ...bend, from: 0, to: 0 } },
      { bend: { ...bend, from: 500, to: 900 } },
      { bend: { from: 20, to: 60, compliance: 4e-6, passed: 1 } },
      { bend: { ...bend, float: { length: 20 * mm, axialStiffness: 2000, slipResistance: 4e3 } } },
      { bend: { ...bend, float: { length: 2 * mm, axialStiffness: 3000, slipResistance: 0 } } },
      { bend, slipResistance: 0 },
    ];
    for (const one of legs) {
      for (const other of [one, {}, { bend, depth: 0.5 * mm }]) {
        const model = modelOf(one, other);
        expectNear(lawOf(model).work, openingWork(model), 1e-4);
      }
    }
  });

  it('with a sharp bend and no thread to follow is a bedding-in of (2 - pi/2) eta F/(n q_b d) diameters', () => {
    const d = Math.sqrt((4 * aramid.linearDensity) / (Math.PI * aramid.density * 0.65));
    const strength = 2 * aramid.linearDensity * 1.7e6;
    const diameters = ((2 - Math.PI / 2) * 0.6 * strength) / (2 * 1.8 * 200e6 * 0.92 * d * d);
    const sharp = bridgingLaw(penetration({ bends: 'yielding', parameters: { ...bending, bendRadius: 0 } }));
    const bedded = bridgingLaw(penetration({ parameters: { ...plain, beddingIn: diameters } }));
    expectNear(sharp.work, bedded.work);
    expectNear(sharp.peak.opening, bedded.peak.opening);
    // The same for threads of any thickness: 0.6 x 1.7 N/tex x 1440 kg/m^3 x 0.65 x pi/4 over 331 MPa is a radius of 2.26 diameters.
    expectNear(diameters, (2 - Math.PI / 2) * 2.26, 2e-3);
  });

  it('is the rigid bend where it was cured rounder than it ever gets, or where friction lets nothing through and the face is hard', () => {
    const rigid = bridgingLaw(penetration());
    const round = bridgingLaw(penetration({ bends: 'yielding', parameters: { ...bending, bendRadius: 3 } }));
    const hard = bridgingLaw(soft({ faceConfinement: 1e9, bendFriction: 50, bendRadius: 0 }));
    for (const law of [round, hard]) {
      expectNear(law.work, rigid.work, 1e-6);
      expectNear(law.peak.opening, rigid.peak.opening, 1e-6);
      expect(law.peak.force).toBe(rigid.peak.force);
    }
  });

  it('sinks no deeper than the side has room, nor further than half the pitch', () => {
    const yields = (rest: Partial<PenetrationInput>) =>
      bridgingModel(soft({ bendRadius: 0.5 }, rest)).model.sides[0].bend;
    const radius = ({ to, compliance }: YieldingBend) => (to * compliance) / (2 - Math.PI / 2);
    expectNear(radius(yields({ thickness: 0.6 * mm })!), 0.3 * mm);
    expectNear(radius(yields({ pitch: 1 * mm })!), 0.5 * mm);
    const { float, from, to } = yields({ thickness: 0.1 * mm })!;
    expectNear(float!.length, 2.5 * mm);
    expect(to).toBe(from);
  });

  it('never lowers opening or work at the same peak; more so with a sharper bend, a softer face and a longer thread on the face', () => {
    const share = fc.double({ min: 0.2, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, share, fc.double({ min: 0.5, max: 6, noNaN: true }), (part, hold, thickness) => {
        const rest = { thickness: thickness * mm };
        const at = (changes: Partial<BridgingParameters>, far = pitch) =>
          bridgingLaw(soft({ siteScatter: 0.15, floatGrip: hold, ...changes }, { ...rest, pitch: far }));
        const rigid = bridgingLaw(penetration({ ...rest, parameters: { ...plain, siteScatter: 0.15 } }));
        const law = at({});
        expect(law.peak.force).toBe(rigid.peak.force);
        const cases = [
          [rigid, law],
          [law, at({ bendRadius: 1.5 * part })],
          [at({}, pitch * part), law],
          [law, at({ bendFriction: 0.3 * part })],
        ] as const;
        for (const [less, more] of cases) {
          expect(more.work).toBeGreaterThanOrEqual(less.work * (1 - 1e-9));
          expect(more.peak.opening).toBeGreaterThanOrEqual(less.peak.opening * (1 - 1e-9));
        }
        // A softer face opens further, but where the arc runs out of room it does so at a lower force and may take less work.
        const [hard, softer] = [1.8, 1.8 * part].map((faceConfinement) => at({ bendRadius: 0.5, faceConfinement }));
        expect(softer!.peak.opening).toBeGreaterThanOrEqual(hard!.peak.opening * (1 - 1e-9));
      }),
      { numRuns: 50 },
    );
  });

  it('is at a face only: not at a lock inside the stack, nor where the face holds nothing', () => {
    const [atFace, atLock] = bridgingModel(soft({}, { type: stitchType(301), crackDepth: 0.8 * mm })).model.sides;
    expect([atFace.bend === undefined, atLock.bend === undefined]).toEqual([false, true]);
    const tuft = bridgingModel(soft({}, { anchors: { underFace: 'none' } })).model;
    expect(tuft.sides[1].bend).toBeUndefined();
  });

  it('lets out what is drawn along paths that slide, too', () => {
    const model = modelOf({ bend }, { bend: { ...bend, from: 10 } });
    const { states } = lawOf(model, { angle: 50 }) as PathLaw;
    const whole = states.slice(1, 40);
    for (const { tension, opening, sliding } of whole) {
      expectNear(
        openingAt(model, tension),
        deflected(2 / side.lateralResistance, tension, opening, sliding).drawn,
        1e-6,
      );
    }
  });

  it('takes radius 1.5 diameters, pressure 1.8 times that inside, friction 0.3 and half the perimeter where nothing is given', () => {
    const bare = penetration({ bends: 'yielding', pitch, underThread: aramid, parameters: {} });
    const { bendRadius, faceConfinement, bendFriction, floatGrip } = plain;
    const given = { bendRadius, faceConfinement, bendFriction, floatGrip };
    expect(bridgingLaw(bare).work).toBe(bridgingLaw({ ...bare, parameters: given }).work);
    const changed = (name: keyof typeof given) =>
      bridgingLaw({ ...bare, parameters: { ...given, [name]: 1.01 * given[name] } }).work;
    for (const name of Object.keys(given) as (keyof typeof given)[]) {
      expect(Math.abs(changed(name) / bridgingLaw(bare).work - 1), name).toBeGreaterThan(1e-5);
    }
    const [note] = bridgingLaw(bare).notes;
    expect(note?.text).toContain('radius of the bends as cured 1.5 diameters');
    expect(note?.text).not.toContain('bedding-in');
    expect(bridgingLaw(bare).sources).toContain('hill-1950');
    expect(bridgingInterval(bare, { samples: 10 }).sources).toContain('tan-2010');
  });

  it('says when the thread on the face is left out for want of a pitch', () => {
    const { notes } = bridgingLaw(penetration({ bends: 'yielding', parameters: bending, underThread: aramid }));
    expect(notes.map((note) => note.text)).toEqual([expect.stringContaining('no pitch given')]);
    expect(bridgingLaw(soft({}, { underThread: aramid })).notes).toEqual([]);
  });

  it('is refused with a bedding-in of its own, a pitch not above 0, or impossible numbers', () => {
    expect(codesOf(() => bridgingLaw(penetration({ bends: 'yielding' })))).toEqual(['contradiction']);
    expect(codesOf(() => bridgingLaw(soft({}, { pitch: 0 })))).toEqual(['out-of-range']);
    const wrong: Partial<YieldingBend>[] = [
      { from: -1 },
      { to: 10 },
      { compliance: Number.NaN },
      { passed: 0 },
      { float: { ...bend.float!, length: 0 } },
      { float: { ...bend.float!, axialStiffness: 0 } },
      { float: { ...bend.float!, slipResistance: -1 } },
    ];
    for (const changes of wrong) {
      expect(codesOf(() => lawOf(modelOf({ bend: { ...bend, ...changes } })))).toEqual(['out-of-range']);
    }
  });
});

describe('the range of a law whose bends yield', () => {
  const bare = penetration({ underThread: aramid, parameters: {} });

  it('is the law when every parameter is given, and wider than with rigid bends upwards', () => {
    const range = bridgingInterval(soft(), { samples: 10 });
    expectNear(range.work.low, bridgingLaw(soft()).work, 1e-4);
    expectNear(range.opening.high, bridgingLaw(soft()).peak.opening);
    const yields = bridgingInterval({ ...bare, bends: 'yielding', pitch }, { samples: 300 });
    expect(yields.work.high).toBeGreaterThan(bridgingInterval(bare, { samples: 300 }).work.high);
  });

  it('leaves the range of rigid bends as it is, number by number', () => {
    const { bendRadius, faceConfinement, bendFriction, floatGrip } = plain;
    const given = { ...bare, parameters: { bendRadius, faceConfinement, bendFriction, floatGrip } };
    expect(bridgingInterval(given, { samples: 50 }).work).toEqual(bridgingInterval(bare, { samples: 50 }).work);
  });
});
