import { bridgingLaw, stitchType } from '@selvage/core';
import { describe, expect, it } from 'vitest';
import { kindAt } from '../../../packages/core/src/design/results/quantities.js';
import { faultIn, underlined } from './faults.js';
import { keysOf, ofText, planData, planProblems, planResults, planText, rows } from './stitch-support.js';

/** The thread `firm`: 75 tex, 1440 kg/m³, 1.7 N/tex, 50 N/tex; two legs, half of 1.6 mm on either side. */
const t = 75e-6;
const strength = 2 * t * 1.7e6;
const EA = 2 * t * 50e6;
const h = 0.8e-3;
const legDiameter = (packing = 0.65): number => Math.sqrt((4 * t) / (Math.PI * 1440 * packing));
const slip = (friction = 7e6, packing = 0.65): number => friction * (Math.PI + 2) * legDiameter(packing);
const near = (value: number, expected: number): void => expect(value / expected).toBeCloseTo(1, 9);
const opening = (bridging: string) => planData(`bridging: { ${bridging} }`).bridging.opening;

describe('what a design says of one stitch', () => {
  it('breaks at a lock under the strength left there and what friction keeps from it', () => {
    near(opening('').peakForce, 0.6 * strength + slip() * h);
    near(opening('lockEfficiency: 50 %').peakForce, 0.5 * strength + slip() * h);
    near(opening('friction: 10 MPa').peakForce, 0.6 * strength + slip(10e6) * h);
    near(opening('strengthFactor: 0.9').peakForce, 0.6 * 0.9 * strength + slip() * h);
    near(opening('packing: 0.5').peakForce, 0.6 * strength + slip(7e6, 0.5) * h);
    expect(opening('').failure).toBe('threadAtAnchor');
  });

  it('breaks in the plane of the crack where little strength is left after sewing', () => {
    const found = opening('sewnEfficiency: 0.5');
    expect(found.failure).toBe('threadAtCrack');
    near(found.peakForce, 0.5 * strength);
  });

  it('opens by what both sides stretch, and by what the bends give', () => {
    const F = 0.6 * strength + slip() * h;
    const stretch = (stiffness: number) => (2 * (F - (slip() * h) / 2) * h) / stiffness;
    near(opening('').openingAtPeak, stretch(EA));
    near(opening('stiffnessFactor: 0.8').openingAtPeak, stretch(0.8 * EA));
    near(opening('beddingIn: 0.25').openingAtPeak, stretch(EA) + 2 * 0.25 * legDiameter());
  });

  it('opens further by bends that yield, at the same force', () => {
    const [rigid, yielding] = [opening(''), opening('bends: yielding')];
    near(yielding.peakForce, rigid.peakForce);
    expect(yielding.openingAtPeak).toBeGreaterThan(2 * rigid.openingAtPeak);
    const pitch = 4e-3;
    const law = bridgingLaw({
      type: stitchType('301-modified'),
      needleThread: { name: 'firm', linearDensity: t, density: 1440, tenacity: 1.7e6, modulus: 50e6 },
      thickness: 2 * h,
      bends: 'yielding',
      pitch,
    });
    near(yielding.openingAtPeak, law.peak.opening);
    expect(faultIn(() => planData('bridging: { bends: yielding, beddingIn: 0.2 }'))).toEqual([
      'contradiction',
      'beddingIn',
    ]);
  });

  it('is drawn out of a face that does not hold it, by friction alone', () => {
    for (const face of ['needleFace', 'underFace']) {
      const found = opening(`${face}: none`);
      expect(found.failure).toBe('threadPullOut');
      near(found.peakForce, slip() * h);
    }
    near(opening('needleFace: surface, underFace: surface').peakForce, 0.6 * strength + slip() * h);
  });

  it('pulls out more often where the scatter lets the crack plane break less', () => {
    const [none, some] = [opening('scatter: 0'), opening('scatter: 20 %')];
    expect(none.peakForce).toBe(some.peakForce);
    // Both anchors are as weak: each breaks in half of the stitches without scatter.
    const F = 0.6 * strength + slip() * h;
    const held = slip() * h;
    const stretched = (2 * held ** 2 * h) / (3 * EA) + ((F * F - held * held) * h) / EA;
    expect(none.work / (stretched + (slip() * h * h) / 2)).toBeCloseTo(1, 3);
    expect(some.work).toBeLessThan(none.work);
  });

  it('ploughs sideways against pressure times width, which opening does not feel', () => {
    const plain = planData().bridging;
    const pressed = planData('bridging: { bearingPressure: 400 MPa }').bridging;
    const wide = planData('bridging: { bearingWidth: 1.84 }').bridging;
    near(pressed.sliding.peakForce, wide.sliding.peakForce);
    expect(pressed.sliding.peakForce).toBeGreaterThan(plain.sliding.peakForce * 1.1);
    expect(pressed.opening.peakForce).toBe(plain.opening.peakForce);
  });

  it('has legs that lean in a zigzag', () => {
    const zigzag = 'pattern: zigzag, pitch: 4 mm, rowSpacing: 6 mm, bight: 3 mm';
    const data = planData('bridging: { legAngle: 15 }', keysOf(zigzag)).bridging;
    const law = bridgingLaw({
      type: stitchType('301-modified'),
      needleThread: { name: 'firm', linearDensity: t, density: 1440, tenacity: 1.7e6, modulus: 50e6 },
      thickness: 2 * h,
      path: { angle: 15 },
    });
    near(data.opening.peakForce, law.peak.force);
    near(data.opening.work, law.work);
    expect(data.opening.peakForce).not.toBe(planData('', keysOf(zigzag)).bridging.opening.peakForce);
    expect(JSON.stringify(data.notes)).toContain('legs that lean by 15°');
  });

  it('has ranges that hold nine in ten, of a value that was given the value itself', () => {
    const { opening: free } = planData().bridging;
    for (const key of ['peakForceInterval', 'openingAtPeakInterval', 'workInterval']) {
      const { low, median, high } = free[key];
      expect(low).toBeLessThan(median);
      expect(median).toBeLessThan(high);
    }
    expect(Object.values<number>(free.shares).reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
    const all =
      'friction: 7 MPa, sewnEfficiency: 0.8, lockEfficiency: 0.6, strengthFactor: 1, stiffnessFactor: 1, packing: 0.65, beddingIn: 0, scatter: 15 %, bearingPressure: 200 MPa, bearingWidth: 0.92';
    const { low, high } = opening(all).peakForceInterval;
    near(low, high);
    near(low, free.peakForce);
  });
});

describe('a measured curve', () => {
  const curve =
    'bridging: { measured: { opening: [0 mm, 0.1 mm, 0.1 mm, 0.9 mm], force: [0 N, 80 N, 20 N, 0 N], failure: threadAtAnchor } }';

  it('takes the place of the computed law, which stands beside it', () => {
    const data = planData(curve).bridging;
    // Triangles: 80 N x 0.1 mm/2 and 20 N x 0.8 mm/2.
    expect(data.opening).toMatchObject({
      measured: true,
      peakForce: 80,
      openingAtPeak: 1e-4,
      failure: 'threadAtAnchor',
    });
    near(data.opening.work, 12e-3);
    near(data.toughnessAdded, 12e-3 * 50_000);
    // Nine in ten between 0.8 and 1.25 of it where the scatter of the repeats is not given; lognormal otherwise.
    near(data.toughnessAddedInterval.low, 0.8 * 12e-3 * 50_000);
    const given = planData(curve.replace('failure:', 'variation: 20 %, failure:')).bridging.toughnessAddedInterval;
    near(given.high, Math.exp(1.6448536269514722 * Math.sqrt(Math.log(1.04))) * 12e-3 * 50_000);
    near(data.computedOpening.peakForce, 0.6 * strength + slip() * h);
    expect(planData().bridging.computedOpening).toBeUndefined();
  });

  it('needs neither thread data nor, for the law itself, a laminate', () => {
    const keys =
      'thread: plain, stitchType: running, pattern: parallel, pitch: 4 mm, rowSpacing: 5 mm, dryThickness: 2 mm';
    const data = planData(curve, keys).bridging;
    expect(data.opening.peakForce).toBe(80);
    expect(data.sliding).toBeNull();
    expect(data.crackDepth).toBeNull();
    expect(data.missing).toEqual([
      'the laminate that is stitched (laminate)',
      'the tenacity of thread plain',
      'the modulus of thread plain',
    ]);
  });

  it('may have been cut off, which is said', () => {
    const cut =
      'bridging: { measured: { opening: [0 mm, 0.1 mm], force: [0 N, 80 N], failure: threadAtAnchor, cutOff: true } }';
    expect(JSON.stringify(planData(cut).bridging.notes)).toContain('its work is a lower bound');
  });
});

describe('a crack among stitches', () => {
  /** Eight layers of 0.2 mm along x: 140 GPa along, 9 GPa across, 0.3; held across. */
  const Q = (E: number): number => E / (1 - (0.3 * 0.3 * 9) / 140);

  it('has a bridging length by the halves of the laminate, and the zone that follows from it', () => {
    const { across, along, opening: law, toughnessAdded } = planData().bridging;
    const N = 1 / (4e-3 * 5e-3);
    near(toughnessAdded, N * law.work);
    const length = (E: number): number => ((Q(E) * h ** 3 * law.openingAtPeak) / (6 * N * law.peakForce)) ** 0.25;
    near(along.bridgingLength, length(140e9));
    near(across.bridgingLength, length(9e9));
    near(along.zone.low, 1.4 * along.bridgingLength);
    near(along.zone.high, 3.4 * along.bridgingLength);
    near(along.zone.needed, 4 * 3.4 * along.bridgingLength);
    near(across.discreteness, 5e-3 / across.bridgingLength);
    near(along.discreteness, 4e-3 / along.bridgingLength);
    expect([across.rowDistance, along.rowDistance]).toEqual([5e-3, 4e-3]);
  });

  it('breaks its arms at E h eps²/3', () => {
    near(planData().bridging.along.ceiling, (Q(140e9) * h * (1100 / 140e3) ** 2) / 3);
  });

  it('lies between two layers, or inside one', () => {
    const even = planData().bridging;
    near(even.crackDepth, h);
    expect(even).toMatchObject({ interface: 4, missing: [] });
    const odd = planResults('', keysOf(rows).replace('one', 'odd')).stitching[0]!.holding;
    expect(odd.crack).toMatchObject({ below: 1, inside: 2 });
    near(odd.crack!.depth, 0.3e-3);
    // [0/90/0] split in the middle: 0.2 mm along x and 0.1 mm across it, about their own neutral plane.
    const [a, b] = [Q(9e9) * 0.2e-3, Q(140e9) * 0.1e-3];
    const D = (a * 0.2e-3 ** 2 + b * 0.1e-3 ** 2) / 12 + ((a * b) / (a + b)) * 0.15e-3 ** 2;
    const { law } = odd.opening!;
    const beta = (50_000 * law.peak.force) / law.peak.opening;
    near(odd.across!.bridgingLength, ((2 * D) / beta) ** 0.25);
  });

  it('near an edge meets rows one by one: no toughness is added up', () => {
    const band =
      'pattern: edgeRows, pitch: 4 mm, rows: [{ offset: 6 mm, length: 400 mm }, { offset: 11 mm, length: 400 mm }]';
    const { bridging } = planData('', keysOf(band));
    expect(bridging).toMatchObject({ edgeBand: true, toughnessAdded: null, along: null });
    expect(bridging.opening.peakForce).toBeGreaterThan(0);
    expect(bridging.toughnessAddedInterval).toBeUndefined();
    near(bridging.across.bandWidth, 0.01);
    near(bridging.across.rowDistance, 5e-3);
    expect(JSON.stringify(bridging.notes)).toContain('judge the rows one by one');
    const one = planData('', keysOf('pattern: edgeRows, pitch: 4 mm, rows: [{ offset: 6 mm, length: 400 mm }]'));
    expect(one.bridging.across.rowDistance).toBeUndefined();
    near(one.inPlane.along.spacing, 12e-3);
  });
});

describe('what is wanting is named', () => {
  const missing = (keys: string): string[] =>
    planData('', `${keys}, pattern: parallel, pitch: 4 mm, rowSpacing: 5 mm, dryThickness: 2 mm`).bridging.missing;

  it('only of threads that cross the crack', () => {
    expect(missing('laminate: one, thread: firm, underThread: plain, stitchType: 301-modified')).toEqual([]);
    expect(missing('laminate: one, thread: firm, underThread: plain, stitchType: 301')).toEqual([
      'the tenacity of thread plain',
      'the modulus of thread plain',
    ]);
    expect(missing('laminate: one, thread: plain, stitchType: saddle')).toHaveLength(2);
  });

  it('of the laminate', () => {
    expect(missing('thread: firm, stitchType: running')).toEqual(['the laminate that is stitched (laminate)']);
    expect(missing('laminate: cored, thread: firm, stitchType: running')).toEqual([
      'a laminate without a core (cored has foam)',
    ]);
    const cored = planData('', keysOf(rows).replace('one', 'cored')).bridging;
    expect(cored).toMatchObject({ opening: null, sliding: null, crackDepth: null, toughnessAdded: null, across: null });
  });

  it('and usual values that do not hold are cautioned against', () => {
    const dense = planData('', keysOf(rows).replace('firm', 'dense'));
    expect(JSON.stringify(dense.bridging.notes)).toContain('thread dense is as dense as glass or carbon');
    const told = planData('bridging: { lockEfficiency: 0.2 }', keysOf(rows).replace('firm', 'dense'));
    expect(JSON.stringify(told.bridging.notes)).not.toContain('as dense as glass');
  });
});

describe('a problem of a stitch stands at the key at fault', () => {
  const measured = (rest: string): string => `measured: { failure: threadAtCrack, ${rest} }`;
  const cases: [what: string, bridging: string, code: string, underlined: string][] = [
    ['a lean without zigzag', 'legAngle: 15', 'contradiction', 'legAngle'],
    ['more strength than the thread has', 'lockEfficiency: 1.2', 'out-of-range', '1.2'],
    ['no strength at all', 'sewnEfficiency: 0', 'out-of-range', '0'],
    ['a friction that pushes', 'friction: -1 MPa', 'out-of-range', '-1 MPa'],
    ['a friction without unit', 'friction: 7', 'unit-missing', '7'],
    ['a packing beyond that of circles', 'packing: 0.95', 'out-of-range', '0.95'],
    ['a bedding-in that lifts', 'beddingIn: -0.1', 'out-of-range', '-0.1'],
    ['a scatter beyond the shares of sites', 'scatter: 60 %', 'out-of-range', '60 %'],
    ['a face of another kind', 'needleFace: glued', 'not-a-choice', 'glued'],
    ['nothing that holds', 'friction: 0 MPa, underFace: none', 'contradiction', '0 MPa'],
    ['an unknown key', 'fricton: 7 MPa', 'unknown-key', 'fricton'],
    [
      'lists of different length',
      measured('opening: [0 mm, 1 mm], force: [0 N, 1 N, 0 N]'),
      'contradiction',
      '[0 N, 1 N, 0 N]',
    ],
    ['a single point', measured('opening: [0 mm], force: [0 N]'), 'out-of-range', '[0 mm]'],
    ['a start after the start', measured('opening: [0.1 mm, 1 mm], force: [0 N, 0 N]'), 'out-of-range', '0.1 mm'],
    ['an opening that falls', measured('opening: [0 mm, 2 mm, 1 mm], force: [0 N, 9 N, 0 N]'), 'out-of-range', '1 mm'],
    ['an end that still holds', measured('opening: [0 mm, 1 mm], force: [0 N, 30 N]'), 'out-of-range', '30 N'],
    ['no force anywhere', measured('opening: [0 mm, 1 mm], force: [0 N, 0 N]'), 'out-of-range', '[0 N, 0 N]'],
    ['a negative force', measured('opening: [0 mm, 1 mm], force: [0 N, -3 N]'), 'out-of-range', '-3 N'],
    ['another failure', 'measured: { opening: [0 mm], force: [0 N], failure: lock }', 'not-a-choice', 'lock'],
    ['a cut-off that is no yes or no', measured('opening: [0 mm], force: [0 N], cutOff: 1'), 'wrong-type', '1'],
  ];
  it.each(cases)('%s', (_, bridging, code, stretch) => {
    const [found, ...others] = planProblems(`bridging: { ${bridging} }`);
    expect(others).toEqual([]);
    expect(found?.code).toBe(code);
    expect(found === undefined ? '' : underlined(found)).toBe(stretch);
  });

  it('names the point of a curve', () => {
    const [fault] = planProblems(`bridging: { ${measured('opening: [0 mm, 2 mm, 1 mm], force: [0 N, 9 N, 0 N]')} }`);
    expect(fault?.message).toContain('opening of point 3');
  });

  it('a lean of 60 degrees is the most, and one beside a measured curve is too much', () => {
    const zigzag = keysOf('pattern: zigzag, pitch: 4 mm, rowSpacing: 6 mm, bight: 3 mm');
    expect(faultIn(() => planResults('bridging: { legAngle: 61 }', zigzag))).toEqual(['out-of-range', '61']);
    const both =
      'bridging: { legAngle: 5, measured: { opening: [0 mm, 1 mm], force: [9 N, 0 N], failure: threadAtCrack } }';
    expect(faultIn(() => planResults(both, zigzag))).toEqual(['contradiction', 'legAngle']);
  });

  it('a packing that the thread has already', () => {
    const keys = keysOf(rows).replace('firm', 'packed');
    const [found] = planProblems('bridging: { packing: 0.6 }', keys);
    expect(found?.code).toBe('contradiction');
    expect(found?.also?.[0]?.where?.excerpt).toContain('packed');
    expect(planData('bridging: { packing: 0.6 }').bridging.opening).toBeDefined();
  });
});

describe('targets know the units of what stitches hold', () => {
  it.each([
    ['bridging.opening.peakForce', 'force'],
    ['bridging.sliding.peakForceInterval.low', 'force'],
    ['bridging.opening.openingAtPeak', 'length'],
    ['bridging.opening.openingAtPeakInterval.high', 'length'],
    ['bridging.opening.work', 'energy'],
    ['bridging.opening.workInterval.median', 'energy'],
    ['bridging.opening.shares.threadAtAnchor', 'fraction'],
    ['bridging.opening.curve.opening.3', 'length'],
    ['bridging.opening.curve.force.3', 'force'],
    ['bridging.toughnessAdded', 'toughness'],
    ['bridging.toughnessAddedInterval.low', 'toughness'],
    ['bridging.crackDepth', 'length'],
    ['bridging.across.bridgingLength', 'length'],
    ['bridging.across.zone.needed', 'length'],
    ['bridging.across.rowDistance', 'length'],
    ['bridging.across.bandWidth', 'length'],
    ['bridging.along.ceiling', 'toughness'],
    ['bridging.along.discreteness', 'number'],
    ['inPlane.along.spacing', 'length'],
    ['inPlane.along.angle', 'angle'],
    ['inPlane.along.modulusFactor.value', 'number'],
    ['inPlane.crowdingFactor.upper.high', 'number'],
  ])('%s is of kind %s', (path, kind) => {
    expect(kindAt(['stitching', 'p', ...path.split('.')])).toBe(kind);
  });

  it('and judge it', () => {
    const target = (quantity: string, limit: string): string => `  - { quantity: stitching.p.${quantity}, ${limit} }\n`;
    const targets = `${target('bridging.opening.work', 'atLeast: 5 mJ')}${target('bridging.toughnessAdded', 'atLeast: 2 kJ/m^2')}`;
    const found = ofText(`${planText()}targets:\n${targets}`);
    const { work } = JSON.parse(JSON.stringify(found.data)).stitching.p.bridging.opening;
    expect(found.targets.map(({ met }) => met)).toEqual([work >= 5e-3, work * 50_000 >= 2000]);
    expect(found.targets.map(({ atLeast }) => atLeast)).toEqual([5e-3, 2000]);
  });
});
