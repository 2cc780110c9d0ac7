import type { Block, Report } from '../../../../packages/core/src/report/blocks.js';
import { polarFigure, stackFigure, stitchFigure } from '../../../../packages/core/src/report/figures/index.js';

/** Invented data throughout: a report that uses every block, with text that tries to break each format. */

export const hostile = `<script>alert("1")</script> & 'a|b' *c* _d_ \`e\``;

/** Moduli of a single orthotropic layer turned by `angle` degrees: a curve with a known shape for the polar figure. */
export function offAxis(angle: number): { Ex: number; Gxy: number } {
  const [E1, E2, G12, nu12] = [38e9, 9e9, 3.6e9, 0.28];
  const c = Math.cos((angle * Math.PI) / 180);
  const s = Math.sin((angle * Math.PI) / 180);
  const S = [1 / E1, 1 / E2, 1 / G12, -nu12 / E1] as const;
  return {
    Ex: 1 / (S[0] * c ** 4 + (2 * S[3] + S[2]) * s ** 2 * c ** 2 + S[1] * s ** 4),
    Gxy: 1 / (4 * (S[0] + S[1] - 2 * S[3]) * s ** 2 * c ** 2 + S[2] * (c ** 2 - s ** 2) ** 2),
  };
}

export const angles = Array.from({ length: 72 }, (_, i) => 5 * i);

const cloth = { name: 'twill cloth 300', angle: 0, thickness: 0.2362e-3, kind: 'cloth' } as const;
const bias = { name: 'biaxial cloth 400', angle: 45, thickness: 0.315e-3, kind: 'cloth' } as const;
const strip = { name: 'carbon strip 300', angle: 0, thickness: 0.3371e-3, kind: 'ud' } as const;
const foam = { name: 'foam core 130', angle: 0, thickness: 6e-3, kind: 'core' } as const;

const edgePlies = [cloth, bias, cloth, bias, cloth, cloth, bias, cloth, bias, cloth];
const spinePlies = [cloth, bias, strip, strip, cloth, foam, cloth, strip, strip, bias, cloth];

export const pattern = (() => {
  const [width, height, pitch] = [32e-3, 22e-3, 4e-3];
  const rows = [
    { y: 6e-3, start: 2e-3 },
    { y: 11e-3, start: 4e-3 },
    { y: 17e-3, start: 2e-3 },
  ];
  const penetrations = rows
    .flatMap(({ y, start }, row) =>
      Array.from({ length: Math.floor((width - start) / pitch + 1e-9) + (start < 3e-3 ? 1 : 0) }, (_, i) => ({
        x: start + i * pitch,
        y,
        row,
      })),
    )
    .filter(({ x }) => x < width);
  const threads = rows.flatMap(({ y, start }) =>
    Array.from({ length: 9 }, (_, i) => ({
      from: { x: start + (i - 1) * pitch, y },
      to: { x: start + i * pitch, y },
      face: i % 2 === 0 ? ('top' as const) : ('bottom' as const),
    })),
  );
  return { penetrations, threads, field: { width, height }, pitch };
})();

const figures = (units: 'metric' | 'us') => ({
  edge: stackFigure({
    id: 'edge-stack',
    title: 'Edge laminate through the thickness, to scale',
    plies: edgePlies,
    units,
  }),
  spine: stackFigure({
    id: 'spine-stack',
    title: 'Cored spine through the thickness, to scale',
    plies: spinePlies,
    units,
  }),
  polar: polarFigure({
    id: 'edge-polar',
    title: 'In-plane moduli of one layer against direction',
    angles,
    curves: [
      { label: 'Ex', values: angles.map((angle) => offAxis(angle).Ex), kind: 'modulus' },
      { label: 'Gxy', values: angles.map((angle) => offAxis(angle).Gxy), kind: 'modulus' },
    ],
    units,
  }),
  stitch: stitchFigure({
    id: 'rows-pattern',
    title: 'Three rows along the edge, the middle row staggered by half a pitch',
    ...pattern,
    edge: 'bottom',
    rowSpacing: 5e-3,
    needleDiameter: 1.1e-3,
    units,
  }),
});

function blocks(units: 'metric' | 'us'): Block[] {
  const drawn = figures(units);
  return [
    {
      kind: 'paragraph',
      text: 'An oar blade for shallow gravel rivers, vacuum infused, its edge held together by three stitched rows. Every number on this page is invented for demonstration.',
    },
    {
      kind: 'facts',
      items: [
        { label: 'Edge thickness', value: { value: 2.677e-3, kind: 'length' } },
        { label: 'Blade mass', value: { value: 0.607, kind: 'mass', digits: 3 } },
        { label: 'Targets met', value: '4 of 5' },
        { label: 'Sewing time', value: { value: 1116, kind: 'time', digits: 3 } },
      ],
    },
    { kind: 'heading', level: 2, id: 'verdict', text: 'What stands and what does not' },
    {
      kind: 'table',
      id: 'targets',
      caption: 'Targets of the design, nearest miss first',
      columns: [{ label: 'Target' }, { label: 'Wanted' }, { label: 'Found', kind: 'length' }, { label: 'Verdict' }],
      rows: [
        ['Chip depth at 6 J', 'at most 4 mm', { value: 4.03e-3, kind: 'length', digits: 3 }, 'not met'],
        ['Split length at 6 J', 'at most 9 mm', { value: 8e-3, kind: 'length' }, 'met'],
        ['Edge thickness', '2.5 to 2.9 mm', { value: 2.677e-3, kind: 'length' }, 'met'],
        ['Spine thickness', '8.6 to 9.2 mm', { value: 8.92e-3, kind: 'length' }, 'met'],
      ],
    },
    {
      kind: 'notes',
      notes: [
        { level: 'warning', text: 'Mean chip depth is 4.03 mm, just over its limit of 4 mm: not shown to be met.' },
        { level: 'assumption', text: 'Plane stress in every layer; no voids.', source: 'jones-1999' },
        { level: 'assumption', text: 'Thread tension does not close the laminate.', source: 'unlisted-2001' },
      ],
    },
    { kind: 'heading', level: 2, id: 'edge', text: 'Edge laminate' },
    {
      kind: 'paragraph',
      text: 'The stack is symmetric and balanced: it stays flat on cooling and does not twist when pulled along the edge.',
    },
    drawn.edge,
    { kind: 'heading', level: 3, id: 'edge-constants', text: 'Engineering constants' },
    {
      kind: 'facts',
      items: [
        { label: 'Thickness', value: { value: 2.677e-3, kind: 'length' } },
        {
          label: 'Areal mass',
          value: { value: 4.939, kind: 'arealMass' },
          remark: 'resin included, fibre volume fraction 0.50',
        },
        {
          label: "Young's modulus along the edge",
          value: { value: 18.2e9, kind: 'modulus' },
          remark: 'equal to that across it',
        },
        { label: 'Expansion along the edge', value: { value: 14.2e-6, kind: 'expansion' } },
        { label: 'Symmetric', value: 'yes' },
      ],
    },
    {
      kind: 'table',
      id: 'edge-moduli',
      caption: 'Moduli in the plane and in bending',
      columns: [
        { label: 'Direction', kind: 'angle' },
        { label: 'In-plane modulus', kind: 'modulus' },
        { label: 'Flexural modulus', kind: 'modulus' },
        { label: 'Bending stiffness per width', kind: 'bendingStiffness' },
        { label: 'Poisson ratio', kind: 'number' },
        { label: 'Remark' },
      ],
      rows: [
        [
          { value: 0, kind: 'angle' },
          { value: 18.19e9, kind: 'modulus' },
          { value: 18.8e9, kind: 'modulus' },
          { value: 33.161, kind: 'bendingStiffness', digits: 5 },
          { value: 0.33, kind: 'number' },
          'along the edge',
        ],
        [
          { value: 22.5, kind: 'angle' },
          { value: 17.9e9, kind: 'modulus' },
          { value: 18e9, kind: 'modulus' },
          { value: 31.7, kind: 'bendingStiffness' },
          { value: 0.3417, kind: 'number' },
          '',
        ],
        [
          { value: -45, kind: 'angle' },
          { value: 16.04e9, kind: 'modulus' },
          { value: 15e9, kind: 'modulus' },
          { value: 28.4, kind: 'bendingStiffness' },
          { value: 0.4, kind: 'number' },
          'along the bias cloth',
        ],
      ],
    },
    drawn.polar,
    { kind: 'heading', level: 2, id: 'spine', text: 'Spine' },
    drawn.spine,
    { kind: 'heading', level: 2, id: 'stitching', text: 'Stitched rows' },
    drawn.stitch,
    {
      kind: 'list',
      items: [
        'Rows at 6, 11 and 17 mm from the edge, pitch 4 mm.',
        'Interlock pulled to the back face.',
        'The third row earns nothing in the edge drop: consider leaving it out.',
      ],
    },
    {
      kind: 'table',
      id: 'threads',
      caption: 'Thread per row and in all',
      columns: [
        { label: 'Row' },
        { label: 'Offset', kind: 'length' },
        { label: 'Length', kind: 'longLength' },
        { label: 'Pitch', kind: 'length' },
        { label: 'Stitches', kind: 'number' },
        { label: 'Needle thread', kind: 'longLength' },
        { label: 'Bobbin thread', kind: 'longLength' },
        { label: 'Net width', kind: 'fraction' },
        { label: 'Penetrations', kind: 'perArea' },
        { label: 'Thread load', kind: 'force' },
      ],
      rows: [1, 2, 3].map((row) => [
        `row ${row}`,
        { value: [6e-3, 11e-3, 17e-3][row - 1] ?? 0, kind: 'length' },
        { value: 1.1 - 0.0175 * (row - 1), kind: 'longLength' },
        { value: 4e-3, kind: 'length' },
        { value: [275, 271, 266][row - 1] ?? 0, kind: 'number' },
        { value: 2.94 - 0.05 * row, kind: 'longLength' },
        { value: 1.1, kind: 'longLength' },
        { value: 0.725, kind: 'fraction' },
        { value: 45454.5, kind: 'perArea' },
        { value: 178.5, kind: 'force' },
      ]),
    },
    { kind: 'heading', level: 2, id: 'limits', text: `Hostile text: ${hostile}` },
    {
      kind: 'table',
      id: 'hostile',
      caption: hostile,
      columns: [{ label: hostile }, { label: 'Formula' }],
      rows: [
        [hostile, '=1+2'],
        ['a, "quoted"\nsecond line', '@name'],
        ['-not a number', '-1.5'],
      ],
    },
    { kind: 'paragraph', text: `Control \u001b[31mred\u0007 ${hostile}` },
    {
      kind: 'caution',
      title: 'Before you build',
      items: [
        'Estimates from the data given; verify by test. This is not a certification.',
        'For rudders on craft that carry others, local rules and licensed practice prevail.',
      ],
    },
    { kind: 'heading', level: 2, id: 'sources', text: 'Sources' },
    {
      kind: 'sources',
      entries: [
        {
          key: 'jones-1999',
          text: 'An invented entry of a bibliography, second edition, pages 70 to 81.',
          access: 'recalled',
        },
        { key: 'demonstration', text: 'Invented for demonstration.', access: 'invented' },
      ],
    },
  ];
}

export function sampleReport(units: 'metric' | 'us' = 'metric'): Report {
  return {
    title: 'Shingle 640 with three stitched rows',
    subtitle: 'Laminate and stitch mechanics of an invented oar blade, revision 3',
    units,
    blocks: blocks(units),
    data: {
      format: 1,
      title: 'Shingle 640 with three stitched rows',
      laminates: {
        edge: {
          thickness: 2.677e-3,
          A: [
            [1, 2, 3],
            [2, 4, 5],
            [3, 5, 6],
          ],
          notes: [],
          sources: ['jones-1999'],
        },
      },
    },
  };
}
