import { describe, expect, it } from 'vitest';
import { keysOf, planData, rows } from './stitch-support.js';

/** Single values and ranges of reference-data/stitch-priors.json, written out. */
const [straightening, aspect, cut, waviness, shearYield] = [1.5, 9, 0.15, 0.035, 0.012];
const hole = 1.1e-3;
const near = (value: number, expected: number): void => expect(value / expected).toBeCloseTo(1, 9);
const price = (laminate: string, pattern = rows, more = 'hole: 1.1 mm') =>
  planData(more, keysOf(pattern).replace('one', laminate)).inPlane;

const affected = (spacing: number): number => Math.min(1, ((1 + straightening) * hole) / spacing);
const modulus = (spacing: number, E: number, G: number, nu: number): number =>
  1 - affected(spacing) * (1 - 1 / (1 + ((E / G - 2 * (1 + nu)) * aspect ** -2) / 2));
const kink = (waviness + shearYield) / (waviness + shearYield + 1 / aspect);

describe('what stitching costs in the plane', () => {
  it('follows the formulas for fibres along and across the rows, with row spacing and pitch', () => {
    const { along, across, missing } = price('skin');
    expect(missing).toEqual([]);
    expect(along).toMatchObject({ layer: 1, material: 'ud', angle: 0, spacing: 5e-3 });
    expect(across).toMatchObject({ layer: 4, angle: 90, spacing: 4e-3 });
    for (const [found, spacing] of [
      [along, 5e-3],
      [across, 4e-3],
    ] as const) {
      near(found.affectedWidth.value, affected(spacing));
      near(found.modulusFactor.value, modulus(spacing, 140, 5, 0.3));
      near(found.compressionFactor.lower.value, kink);
      near(found.compressionFactor.upper.value, 1 - affected(spacing) * (1 - kink));
      near(found.tensionFactor.value, 1 - (cut * hole) / spacing);
    }
  });

  it('has the tear-off line, and the room that thread and pockets take', () => {
    const { perforationFactor, crowdingFactor, published } = price('skin');
    near(perforationFactor.lower.value, 1 - hole / 4e-3);
    near(perforationFactor.upper.value, 1 - (cut * hole) / 4e-3);
    const thread = (2 * 75e-6) / (1440 * 0.65);
    near(crowdingFactor.lower, 1 / (1 - 50_000 * thread));
    // Pockets end at the next hole along the fibres: 4 mm along the rows, 5 mm across them; the mean of both.
    const pocket = (along: number): number => 1 / (1 - (50_000 * hole * Math.min(aspect * hole, along)) / 2);
    near(crowdingFactor.upper.value, (pocket(4e-3) + pocket(5e-3)) / 2);
    expect(published.length).toBeGreaterThan(5);
    const [low, high] = [
      Math.min(...published.map((one: { low: number }) => one.low)),
      Math.max(...published.map((one: { high: number }) => one.high)),
    ];
    // Mechakra 2021, abstract: -45 % in tension, +20.25 % in flexure.
    near(low, 0.55);
    near(high, 1.2025);
  });

  it('takes the stiffest fibres within 15 degrees of the load', () => {
    const { along, across } = price('slanted');
    expect(along).toMatchObject({ layer: 1, material: 'ud', angle: 10 });
    expect(across).toMatchObject({ layer: 2, material: 'cloth', angle: 90 });
    near(across.modulusFactor.value, modulus(4e-3, 60, 4, 0.05));
    expect(JSON.stringify(price('slanted').notes)).toContain('cloth (cloth) is wavy already');
    expect(JSON.stringify(price('skin').notes)).not.toContain('is wavy already');
  });

  it('says in which direction there are no such fibres', () => {
    const one = price('one');
    expect(one.missing).toEqual(['fibres within 15 degrees of y, across the rows']);
    expect(one.across).toBeNull();
    const steep = price('steep');
    expect(steep.missing).toHaveLength(2);
    near(steep.perforationFactor.lower.value, 1 - hole / 4e-3);
  });

  it('stays in the faces of a sandwich, and asks for the laminate', () => {
    expect(price('cored').along).toMatchObject({ layer: 1, material: 'ud' });
    const none = planData('', `thread: firm, stitchType: running, dryThickness: 2 mm, ${rows}`).inPlane;
    expect(none).toMatchObject({ missing: ['the laminate that is stitched (laminate)'], along: null, across: null });
  });

  it('counts the two sides of a zigzag, the nearer holes of crossing rows, and the rows of an edge', () => {
    const zigzag = price('skin', 'pattern: zigzag, pitch: 4 mm, rowSpacing: 6 mm, bight: 3 mm');
    expect([zigzag.along.spacing, zigzag.across.spacing]).toEqual([3e-3, 4e-3]);
    near(zigzag.perforationFactor.lower.value, 1 - hole / 8e-3);
    const narrow = price('skin', 'pattern: zigzag, pitch: 4 mm, rowSpacing: 6 mm, bight: 1 mm');
    expect(narrow.along.spacing).toBe(6e-3);
    near(narrow.perforationFactor.lower.value, 1 - hole / 4e-3);
    const crossing = (angle: number) =>
      price(
        'skin',
        `pattern: crossing, pitch: 4 mm, rowSpacing: 8 mm, crossing: { pitch: 5 mm, rowSpacing: 3 mm, angle: ${angle} }`,
      );
    expect([crossing(90).along.spacing, crossing(90).across.spacing]).toEqual([5e-3, 3e-3]);
    near(crossing(90).perforationFactor.lower.value, 1 - hole / 4e-3);
    expect(JSON.stringify(crossing(60).notes)).toContain('crosses at a slant');
    expect(JSON.stringify(crossing(90).notes)).not.toContain('crosses at a slant');
    const edge = price(
      'skin',
      'pattern: edgeRows, pitch: 4 mm, rows: [{ offset: 6 mm, length: 400 mm }, { offset: 12 mm, length: 400 mm, pitch: 3 mm }]',
    );
    near(edge.along.spacing, 6e-3);
    expect(edge.across.spacing).toBe(3e-3);
    near(edge.perforationFactor.lower.value, 1 - hole / 3e-3);
  });

  it('takes the pocket by the thread and the cut by the needle where no hole is given', () => {
    const { perforationFactor, notes } = price('skin', rows, 'needle: 120');
    const bundle = Math.sqrt((4 * 2 * 75e-6) / (Math.PI * 1440 * 0.65));
    near(perforationFactor.lower.value, 1 - (1.25 * bundle) / 4e-3);
    near(perforationFactor.upper.value, 1 - (cut * 1.2e-3) / 4e-3);
    expect(JSON.stringify(notes)).toContain('close around the thread');
  });

  it('of thread that fills half of the plane is not estimated', () => {
    const dense = price('skin', 'pattern: parallel, pitch: 0.4 mm, rowSpacing: 0.5 mm');
    expect(dense.along).toBeNull();
    expect(dense.missing[0]).toMatch(/thread takes .* % of the area/);
  });
});
