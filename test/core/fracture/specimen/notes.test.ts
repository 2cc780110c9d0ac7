import { describe, expect, it } from 'vitest';
import {
  type BridgingRow,
  type DcbSpecimen,
  type EnfSpecimen,
  simulateDcb,
  simulateEnf,
  simulatePeel,
  simulateWedge,
  type WedgeEdge,
} from '../../../../packages/core/src/fracture/index.js';
import { openingPair, rootLength } from '../../../../packages/core/src/fracture/specimen/opening-pair.js';
import type { Note } from '../../../../packages/core/src/provenance/index.js';
import { bridgingLaw, stitchType } from '../../../../packages/core/src/stitch/index.js';
import { armOf, brittle, cloth, codesOf, mm, row, rowsOf } from './support.js';

const arm = armOf(cloth);
const dcb: DcbSpecimen = {
  arms: [arm, arm],
  width: 20 * mm,
  length: 150 * mm,
  crackLength: 50 * mm,
  bondToughness: 400,
  rows: [],
};
const enf: EnfSpecimen = { ...dcb, span: 100 * mm, crackLength: 30 * mm, bondToughness: 1200 };
const edge: WedgeEdge = {
  arms: [arm, arm],
  width: 100 * mm,
  depth: 60 * mm,
  opening: 2 * mm,
  bondToughness: 300,
  rows: [],
};
const thin = armOf({ ...cloth, h: 0.6 * mm, E: 20e9 });
const peel = { ...dcb, arms: [thin, thin] as const, length: 120 * mm, bondToughness: 500 };
const root = rootLength(openingPair([arm, arm]));

const texts = ({ notes }: { readonly notes: readonly Note[] }, level?: Note['level']): string =>
  notes
    .filter((note) => level === undefined || note.level === level)
    .map(({ text }) => text)
    .join('\n');

describe('notes on a specimen', () => {
  it('say how far the levers of a wide opening mislead, at the largest of an onset', () => {
    const wide = simulateDcb({ ...dcb, rows: rowsOf(52 * mm, 5 * mm, 18), until: { crackLength: 100 * mm } });
    const largest = Math.max(...wide.events.map(({ displacement, crackLength }) => displacement / crackLength));
    const [, share = '', percent = ''] =
      /onset, ([\d.]+), straight levers overstate .* by (\d+) %/.exec(texts(wide)) ?? [];
    expect(Number(share)).toBeGreaterThan(0.4);
    // A jump is read at the crack length before it: no event lies farther back than the crack then was.
    expect(Number(share)).toBeGreaterThanOrEqual(Number(largest.toFixed(2)) - 0.01);
    expect(Number(percent)).toBe(Math.round(100 * (1 / (1 - 0.3 * Number(share) ** 2) - 1)));
    expect(texts(simulateDcb(dcb))).not.toContain('straight levers');
  });

  it('say the same of a bent specimen and of an edge held open', () => {
    const soft = armOf({ ...cloth, h: 0.5 * mm });
    const bent = simulateEnf({ ...enf, arms: [soft, soft] });
    expect(texts(bent, 'warning')).toMatch(
      /of the span.*a straight beam understates the toughness by load by about \d+ %/,
    );
    const open = simulateWedge({ ...edge, arms: [soft, soft], opening: 4 * mm, rows: [brittle(5 * mm, 1e8, 1e5)] });
    const share = (4 * mm) / open.splitLength;
    expect(share).toBeGreaterThan(0.4);
    expect(texts(open, 'warning')).toContain(`The opening is ${share.toFixed(2)} of the split`);
    expect(texts(open, 'warning')).toContain(`${Math.round(25 * Math.min(share, 1) ** 2)} %`);
    expect(texts(simulateWedge(edge))).not.toContain('of the split');
  });

  it('say plainly that nothing stops a split', () => {
    const through = simulateWedge({ ...edge, opening: 40 * mm });
    expect(through.arrested).toBe(false);
    expect(texts(through, 'warning')).toContain('runs through the depth');
    expect(texts(simulateWedge(edge))).not.toContain('runs through');
  });

  it('say why a test ends before the bond does, and only there', () => {
    const left = `${Number((4000 * root).toPrecision(4))} mm of bond left`;
    expect(texts(simulateDcb(dcb))).toContain(`The test ends with ${left}`);
    expect(texts(simulateDcb({ ...dcb, until: { crackLength: 100 * mm } }))).not.toContain('of bond left');
    expect(texts(simulatePeel(peel))).toContain('of bond left');
  });

  it('say that what a jump sets free breaks nothing more', () => {
    for (const one of [simulateDcb(dcb), simulateEnf(enf), simulatePeel(peel)]) {
      expect(texts(one)).toContain('what that sets free breaks nothing more');
    }
  });

  it('warn of rows with so few stitches that no single specimen is the average', () => {
    const sparse = (penetrations: number): BridgingRow[] => [60, 70].map((at) => row(at * mm, penetrations));
    expect(texts(simulateDcb({ ...dcb, rows: sparse(0.42) }), 'warning')).toContain(
      '0.42 stitches a row across the width',
    );
    expect(texts(simulateDcb({ ...dcb, rows: sparse(0.42) }))).toContain('a single one has none or one');
    expect(texts(simulatePeel({ ...peel, rows: sparse(1.4) }))).toContain('a single one has one or two');
    const few = [10, 20].map((at) => row(at * mm, 0.5));
    expect(texts(simulateEnf({ ...enf, rows: few }))).toContain('0.5 stitches a row');
    expect(texts(simulateWedge({ ...edge, rows: few }))).toContain('0.5 stitches a row');
    expect(texts(simulateDcb({ ...dcb, rows: sparse(1.6) }))).not.toContain('stitches a row');
    // Counted hole by hole.
    expect(texts(simulateDcb({ ...dcb, rows: sparse(1) }))).not.toContain('stitches a row');
  });

  it('warn of arms too stiff to be peeled, by the number of bending lengths of free arm', () => {
    const thick = armOf({ ...cloth, h: 20 * mm, E: 24.5e9 });
    const short = {
      ...peel,
      arms: [thick, thick] as const,
      length: 400 * mm,
      crackLength: 30 * mm,
      bondToughness: 250,
    };
    expect(texts(simulatePeel(short), 'warning')).toMatch(/too stiff to be peeled.*as type dcb/);
    expect(texts(simulatePeel({ ...peel, length: 200 * mm }))).not.toMatch(/too stiff|short for a peel/);
    const seen: number[] = [];
    // On either side of one and two bending lengths √(EI b/P).
    const middle = armOf({ ...cloth, h: 1.2 * mm, E: 20e9 });
    for (const crackLength of [30, 60, 100, 200, 400].map((a) => a * mm)) {
      const one = simulatePeel({ ...peel, arms: [middle, middle], crackLength, length: crackLength + 30 * mm });
      const most = Math.max(
        ...one.states.map((at) => at.crackLength * Math.sqrt(at.load / (middle.bendingStiffness * 20 * mm))),
      );
      expect(texts(one).includes('too stiff')).toBe(most < 1);
      expect(texts(one).includes('short for a peel')).toBe(most >= 1 && most < 2);
      seen.push(most);
    }
    expect([seen.some((n) => n < 1), seen.some((n) => n > 1 && n < 2), seen.some((n) => n > 2)]).toEqual([
      true,
      true,
      true,
    ]);
  });
});

describe('limits of a specimen', () => {
  const messageOf = (call: () => unknown): string => {
    try {
      call();
    } catch (error) {
      return (error as Error).message;
    }
    return expect.fail('nothing was thrown');
  };

  it('say what least bond arms so thick need', () => {
    const thick = armOf({ ...cloth, h: 20 * mm });
    const reserve = 4 * rootLength(openingPair([thick, thick]));
    const least = Math.ceil((50 * mm + reserve) * 1e4) / 10;
    for (const [call, name] of [
      [
        () => simulateDcb({ ...dcb, arms: [thick, thick], length: 60 * mm }),
        `length = 60 mm, must be above ${least} mm`,
      ],
      [
        () => simulateWedge({ ...edge, arms: [thick, thick], depth: 10 * mm }),
        `depth = 10 mm, must be above ${Math.ceil(reserve * 1e4) / 10} mm`,
      ],
      [() => simulatePeel({ ...peel, arms: [thick, thick], length: 60 * mm }), 'length = 60 mm, must be above'],
    ] as const) {
      expect(codesOf(call)).toEqual(['out-of-range']);
      expect(messageOf(call)).toContain(name);
      expect(messageOf(call)).toContain('arms this thick and stiff need');
    }
    // What is said to be enough is.
    expect(() => simulateDcb({ ...dcb, arms: [thick, thick], length: (least + 0.01) * mm })).not.toThrow();
  });

  it('keep rows to what can be followed in seconds, unless another number is given', () => {
    const many = (count: number, from = 51 * mm) => rowsOf(from, 0.1 * mm, count, 0.01);
    const messages = [
      [() => simulateDcb({ ...dcb, rows: many(601) }), 'rows = 601 met by the crack, at most 600'],
      [
        () => simulateEnf({ ...enf, span: 200 * mm, rows: many(301, 31 * mm) }),
        'rows = 301 met by the crack, at most 300',
      ],
      [() => simulateWedge({ ...edge, rows: many(251, 5 * mm) }), 'rows = 251 met by the crack, at most 250'],
      [() => simulatePeel({ ...peel, rows: many(151) }), 'rows = 151 met by the crack, at most 150'],
      [() => simulateDcb({ ...dcb, rows: many(3), mostRows: 2 }), 'rows = 3 met by the crack, at most 2'],
    ] as const;
    for (const [call, message] of messages) {
      expect(codesOf(call)).toEqual(['out-of-range']);
      expect(messageOf(call)).toContain(message);
    }
    // Rows beyond the end of the test are not met.
    expect(
      simulateDcb({ ...dcb, rows: rowsOf(52 * mm, 5 * mm, 10), mostRows: 2, until: { crackLength: 60 * mm } }).events
        .length,
    ).toBeGreaterThan(0);
  });
});

describe('rows whose bends yield', () => {
  it('tighten again once their arcs find no more room, and are followed in every specimen', () => {
    // Invented aramid thread through a thin laminate.
    const aramid = { name: 'aramid', linearDensity: 60e-6, density: 1440, tenacity: 1.8e6, modulus: 50e6 };
    const penetration = {
      type: stitchType('301'),
      needleThread: aramid,
      thickness: 1 * mm,
      bends: 'yielding' as const,
      pitch: 4 * mm,
    };
    const across = (path?: { angle: number }) => {
      const law = bridgingLaw({ ...penetration, ...(path && { path }) });
      const secants = law.opening.map((w, i) => (law.force[i] ?? 0) / w).slice(1);
      const dip = secants.findIndex((one, i) => one < (secants[i + 1] ?? 0));
      expect(dip).toBeGreaterThan(0);
      return (at: number): BridgingRow => ({ position: at * mm, penetrations: 5, curve: law, failure: law.failure });
    };
    const opening = [52, 56, 60].map(across());
    const pulled = [
      simulateDcb({ ...dcb, rows: opening, until: { crackLength: 80 * mm } }),
      simulatePeel({ ...peel, rows: opening, length: 80 * mm }),
      simulateEnf({ ...enf, rows: [20, 24, 28].map(across({ angle: 90 })) }),
    ];
    for (const { energyError, states } of pulled) {
      expect(energyError).toBeLessThan(0.005);
      states.slice(1).forEach(({ thread }, i) => {
        expect(thread).toBeGreaterThanOrEqual((states[i]?.thread ?? 0) - 1e-9);
      });
    }
    for (const { verdict } of pulled.slice(0, 2)) expect(verdict.first).toBe(opening[0]?.failure);
    expect(simulateWedge({ ...edge, rows: [5, 9].map(across()) }).splitLength).toBeGreaterThan(5 * mm);
  });
});
