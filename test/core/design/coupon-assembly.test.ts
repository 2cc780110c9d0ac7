import { describe, expect, it } from 'vitest';
import { armOf, rowsAcross } from '../../../packages/core/src/fracture/index.js';
import { couponOf, file, modelOf, withText } from './coupon-support.js';

/** Places and numbers of penetrations of the rows in a coupon, mm. */
const rowsOf = (name: string, text?: string) => {
  const { stitching, specimen } = couponOf(name, text).coupon;
  if (stitching === undefined) throw new Error('not stitched');
  const curve = { opening: [0, 1e-3], force: [0, 1] };
  const rows = rowsAcross({ ...stitching, width: specimen.width, curve, failure: 'threadAtCrack' });
  return rows.map(({ position, penetrations }) => [Math.round(position * 1e7) / 1e4, penetrations]);
};
const notesOf = (name: string, text?: string) =>
  couponOf(name, text)
    .notes.map((note) => note.text)
    .join('\n');
const laminateOf = (name: string) => modelOf().laminates.find((one) => one.name === name)!.laminate;

describe('a coupon is what the file says, in SI', () => {
  it('dcb', () => {
    const { coupon, title, arms, stitching } = couponOf('open');
    expect(coupon.specimen).toMatchObject({
      kind: 'dcb',
      width: 0.02,
      length: 0.14,
      crackLength: 0.04,
      bondToughness: 300,
    });
    expect({ title, arms, stitching }).toEqual({ title: 'Opened', arms: ['arm', 'arm'], stitching: 'seam' });
    expect(coupon).not.toHaveProperty('bondToughnessRange');
    expect(coupon.specimen).not.toHaveProperty('until');
  });

  it('enf', () => {
    const text = withText(
      'overhang: 15 mm',
      'overhang: 15 mm, loadSpan: 20 mm, friction: 0.3, until: { displacement: 4 mm }',
    );
    const { specimen } = couponOf('slide', text).coupon;
    expect(specimen).toMatchObject({
      kind: 'enf',
      span: 0.1,
      overhang: 0.015,
      crackLength: 0.035,
      loadSpan: 0.02,
      friction: 0.3,
      until: { displacement: 4e-3 },
    });
    expect(specimen).not.toHaveProperty('length');
  });

  it('peel', () => {
    const { coupon } = couponOf('torn');
    expect(coupon.specimen).toMatchObject({
      kind: 'peel',
      length: 0.15,
      crackLength: 0.05,
      until: { crackLength: 0.1 },
    });
    expect(coupon.bondToughnessRange).toEqual({ low: 200, high: 400 });
  });

  it('wedge', () => {
    const { specimen } = couponOf('wedged').coupon;
    expect(specimen).toMatchObject({ kind: 'wedge', opening: 1e-3, depth: 0.06, width: 0.1 });
    expect(specimen).not.toHaveProperty('crackLength');
    expect(
      couponOf('wedged', withText('depth: 60 mm', 'depth: 60 mm, crackLength: 2 mm')).coupon.specimen,
    ).toMatchObject({ crackLength: 2e-3 });
  });

  it('without stitches', () => {
    const plain = couponOf('plain');
    expect(plain.coupon).not.toHaveProperty('stitching');
    expect(plain).not.toHaveProperty('stitching');
  });

  it('with results of tests', () => {
    expect(couponOf('open', withText('firstRow: 5 mm', 'test: { peakForce: 60 N, variation: 5 % }')).test).toEqual({
      peakForce: 60,
      variation: 0.05,
    });
    expect(couponOf('open', withText('firstRow: 5 mm', 'test: { peakForce: 60 N }')).test).toEqual({ peakForce: 60 });
  });
});

describe('the arms', () => {
  it('have their crack faces toward each other', () => {
    const { arms } = couponOf('torn', withText('[thin, arm]', '[thin, thin]')).coupon.specimen;
    const options = { across: 'free', breaking: 'fibres' } as const;
    const { notes: _, sources: __, ...upper } = armOf(laminateOf('thin'), { ...options, crackFace: 'bottom' });
    const { notes: ___, sources: ____, ...lower } = armOf(laminateOf('thin'), { ...options, crackFace: 'top' });
    expect(arms).toEqual([upper, lower]);
    // The layer across is at the crack in one arm and outside in the other.
    expect(upper.failureStrain).not.toEqual(lower.failureStrain);
  });

  it('are held across, and anything breaks them, when nothing else is said', () => {
    const [arm] = couponOf('plain').coupon.specimen.arms;
    expect(arm).toMatchObject({ bendingStiffness: armOf(laminateOf('thin')).bendingStiffness });
    expect(arm.failureStrain).toEqual(armOf(laminateOf('thin')).failureStrain);
    const free = couponOf('plain', withText('arms: thin, width', 'across: free, arms: thin, width')).coupon.specimen
      .arms[0];
    expect(free.bendingStiffness).toBeLessThan(arm.bendingStiffness);
    const fibres = couponOf('plain', withText('arms: thin, width', 'breaking: fibres, arms: thin, width')).coupon
      .specimen.arms[0];
    expect(fibres.failureStrain!.tension).toBeGreaterThan(arm.failureStrain!.tension);
  });

  it('bring their notes and sources', () => {
    expect(notesOf('open')).toContain('Modulus through the thickness from the plies');
    expect(couponOf('open').sources.length).toBeGreaterThan(0);
  });

  it('a laminate that differs from side to side is told of', () => {
    expect(notesOf('plain')).toContain('both arms are laminate thin as written');
    expect(notesOf('open')).not.toContain('as written');
    expect(notesOf('torn')).not.toContain('as written');
  });
});

describe('the stitches', () => {
  it('go through both arms, the crack between them', () => {
    // thin has 7 layers of 0.25 mm, arm 10.
    const { penetration } = couponOf('torn').coupon.stitching!;
    expect(penetration.thickness).toBeCloseTo(17 * 0.25e-3, 12);
    expect(penetration.crackDepth).toBeCloseTo(7 * 0.25e-3, 12);
    expect(notesOf('torn')).toContain(
      'the stitch goes through both arms, 4.25 mm, and the crack 1.75 mm below its needle side; laminate arm of stitch plan other is 2.5 mm thick',
    );
    expect(notesOf('open')).not.toContain('goes through both arms');
    expect(notesOf('torn', `units: us\n${file}`)).toContain('goes through both arms, 0.1673 in');
  });

  it('are those of the plan: threads, strands and what is set of the stitch', () => {
    const text = withText(
      'bight: 4 mm',
      'bight: 4 mm, strandsInNeedle: 2, underThread: slack2, bridging: { friction: 5 MPa, needleFace: none, legAngle: 20 }',
    ).replace(
      '  slack:',
      '  slack2: { linearDensity: 50 tex, density: 1440 kg/m^3, tenacity: 1 N/tex, modulus: 40 N/tex }\n  slack:',
    );
    const { penetration, legAngle } = couponOf('torn', text.replace('legAngle: 20', 'legAngle: 20 deg')).coupon
      .stitching!;
    expect(penetration).toMatchObject({
      needleThread: { name: 't75' },
      underThread: { name: 'slack2' },
      anchors: { needleFace: 'none' },
      parameters: { frictionStress: 5e6 },
    });
    expect(penetration.type.legsAbove.needle).toBe(
      2 * couponOf('torn').coupon.stitching!.penetration.type.legsAbove.needle,
    );
    expect(legAngle).toBe(20);
  });

  it('may hold by a measured curve, which asks nothing of the thread', () => {
    const text = withText('stitching: seam, width: 20 mm, length', 'stitching: loose, width: 20 mm, length').replace(
      'rowSpacing: 6 mm, dryThickness',
      'rowSpacing: 6 mm, bridging: { measured: { opening: [0 mm, 0.1 mm, 0.3 mm], force: [0 N, 30 N, 0 N], failure: threadAtCrack } }, dryThickness',
    );
    expect(couponOf('open', text).coupon.stitching!.measured).toMatchObject({ peak: { force: 30 }, measured: true });
  });
});

describe('the rows', () => {
  it('begin where the first is, and go to the end of the bond', () => {
    // 45, 51 ... 135 mm; 20 mm at a pitch of 4 mm.
    expect(rowsOf('open')).toEqual(Array.from({ length: 16 }, (_, i) => [45 + 6 * i, 5]));
  });

  it('are one distance behind the crack when nothing is said, which a note tells', () => {
    expect(rowsOf('slide')[0]).toEqual([41, 5]);
    expect(rowsOf('slide').at(-1)).toEqual([113, 5]);
    expect(notesOf('slide')).toContain('one distance of rows, 6 mm, from the end of the crack: no `firstRow` is given');
    expect(notesOf('slide', `units: us\n${file}`)).toContain('one distance of rows, 0.2362 in,');
    expect(notesOf('open')).not.toContain('firstRow');
  });

  it('end with the stitched stretch', () => {
    // Along the rows: every pitch of 4 mm from 54 mm on to below 94 mm, 20 mm at 10 mm.
    expect(rowsOf('torn')).toEqual(Array.from({ length: 10 }, (_, i) => [54 + 4 * i, 2]));
    // From 45 mm on to 48 mm.
    expect(rowsOf('open', withText('firstRow: 5 mm', 'firstRow: 5 mm, stitchedLength: 3 mm'))).toEqual([[45, 5]]);
  });

  it('of a zigzag begin with the first of its two', () => {
    const text = withText('stitching: seam, width: 20 mm, length', 'stitching: other, width: 20 mm, length').replace(
      'firstRow: 5 mm',
      'firstRow: 5 mm, stitchedLength: 15 mm',
    );
    // Two sub-rows 4 mm apart, every 10 mm, each with half the holes.
    expect(rowsOf('open', text)).toEqual([
      [45, 2.5],
      [49, 2.5],
      [55, 2.5],
      [59, 2.5],
    ]);
  });

  it('of an edge are where their offsets say', () => {
    // The rows close with whole stitches: 800/4 = 200 and 790/4 = 197.5, so 198 of 790/198 mm.
    const [first, second] = rowsOf('wedged');
    expect(first).toEqual([4, 25]);
    expect(second?.[0]).toBe(9);
    expect(second?.[1]).toBeCloseTo(100 / (790 / 198), 9);
  });

  it('of an edge that lie in the crack at the start are cut, which a note tells', () => {
    const text = withText(
      'crackLength: 40 mm, bondToughness: 300 J/m^2, firstRow: 5 mm',
      'crackLength: 6 mm, bondToughness: 300 J/m^2',
    ).replace('stitching: seam, width: 20 mm, length', 'stitching: edge, width: 20 mm, length');
    expect(rowsOf('open', text).map(([place]) => place)).toEqual([9]);
    expect(notesOf('open', text)).toContain(
      'one row lies in the crack at the start, at less than 6 mm from the loads: taken as cut',
    );
  });

  it('of a field in a wedged edge count from the edge', () => {
    const text = withText('stitching: edge, ', 'stitching: seam, firstRow: 8 mm, stitchedLength: 10 mm, ');
    expect(rowsOf('wedged', text)).toEqual([
      [8, 25],
      [14, 25],
    ]);
  });

  it('of an edge, when the crack runs along them, begin behind the crack', () => {
    const text = withText(
      'stitching: seam, width: 20 mm, length',
      'stitching: edge, growth: along, width: 6 mm, length',
    ).replace('firstRow: 5 mm', 'firstRow: 5 mm, stitchedLength: 9 mm');
    // Only the row 4 mm from the edge lies in a strip of 6 mm.
    expect(rowsOf('open', text)).toEqual([
      [45, 1],
      [49, 1],
      [53, 1],
    ]);
  });
});
