import type { LaminateResult, Process } from '../../design/index.js';
import { diagnosisStatements, isCloth, isIsotropic, type Matrix3, offAxisConstants } from '../../laminate/index.js';
import type { Ply } from '../../material/index.js';
import type { KindName, UnitSystem } from '../../quantity/index.js';
import type { Block, Cell } from '../blocks.js';
import { type BandKind, polarFigure, stackFigure } from '../figures/index.js';
import { amount, amountOr, heading, listOf, slug, table, withoutNoise } from './build.js';
import { laminateBlister } from './laminate-blister.js';
import { laminateEdge } from './laminate-edge.js';
import { laminateExpansion } from './laminate-expansion.js';
import { laminatePanel } from './laminate-panel.js';
import { laminateSandwich } from './laminate-sandwich.js';
import { laminateShear } from './laminate-shear.js';

/** How a ply is drawn. */
const bandKind = (ply: Ply): BandKind =>
  ply.core === true ? 'core' : isIsotropic(ply) ? 'mat' : isCloth(ply) ? 'cloth' : 'ud';

const noDensity = 'not known: a ply has no density';
const noConstituents = 'not known: a ply was given without its constituents';

function madeInWords(process: Process): string {
  if (process.kind === 'given') return 'plies of given thickness';
  if (process.kind === 'bag') return 'bag: fibre fraction given, thickness follows';
  return `closed tool: gap given, fibre fraction ${(process.fibreVolumeFraction * 100).toFixed(1)} % follows`;
}

function facts(result: LaminateResult): Block {
  const { model, stiffness, arealMass } = result;
  const { process } = model;
  const made = madeInWords(process);
  return {
    kind: 'facts',
    items: [
      ...(model.code === undefined
        ? []
        : [{ label: 'Orientation code as written', value: model.code, remark: 'from the tool side' }]),
      { label: 'Single layers, canonical', value: result.canonicalCode },
      { label: 'Written out in full', value: result.fullCode },
      { label: 'Process', value: made },
      { label: 'Thickness', value: amount(stiffness.thickness, 'length') },
      { label: 'Areal mass', value: amountOr(arealMass.total, 'arealMass', noDensity) },
      { label: 'of it dry fibre', value: amountOr(arealMass.fibre, 'arealMass', noConstituents) },
      {
        label: 'of it resin',
        value: amountOr(arealMass.resin, 'arealMass', noConstituents),
        ...(model.laminate.plies.some((ply) => ply.core)
          ? { remark: 'without what the cut faces of a core drink' }
          : {}),
      },
    ],
  };
}

function plyTable(result: LaminateResult, id: string): Block {
  let z = -result.stiffness.thickness / 2;
  const rows = result.model.laminate.plies.map((ply, i): Cell[] => {
    z += ply.thickness;
    return [
      String(i + 1),
      ply.name,
      amount(ply.angle, 'angle'),
      amount(ply.thickness, 'length'),
      amount(withoutNoise(z, result.stiffness.thickness), 'length'),
      amount(ply.E1, 'modulus'),
      amount(ply.E2, 'modulus'),
      amount(ply.G12, 'modulus'),
      amount(ply.nu12, 'number'),
      amountOr(ply.fibreVolumeFraction, 'fraction', '–'),
    ];
  });
  return table(
    `${id}-plies`,
    'Layers from the tool side; z counts from the mid-plane to the layer’s upper face',
    [
      { label: 'No.' },
      { label: 'Material' },
      { label: 'Angle', kind: 'angle' },
      { label: 'Thickness', kind: 'length' },
      { label: 'z', kind: 'length' },
      { label: 'E1', kind: 'modulus' },
      { label: 'E2', kind: 'modulus' },
      { label: 'G12', kind: 'modulus' },
      { label: 'ν12', kind: 'number' },
      { label: 'Fibre', kind: 'fraction' },
    ],
    rows,
  );
}

function matrixTable(id: string, caption: string, matrix: Matrix3, kind: KindName, scale: number): Block {
  const axes = ['x', 'y', 'xy'];
  const rows = matrix.map((row, i): Cell[] => [
    axes[i] ?? '',
    ...row.map((value) => amount(withoutNoise(value, scale), kind)),
  ]);
  return table(id, caption, [{ label: '' }, ...axes.map((label) => ({ label, kind }))], rows);
}

function stiffnessTables({ stiffness: s }: LaminateResult, id: string): Block[] {
  const [A11, A22] = [s.A[0][0] ?? 0, s.A[1][1] ?? 0];
  const size = Math.max(A11, A22);
  return [
    matrixTable(`${id}-a`, 'A, extensional stiffness', s.A, 'forcePerLength', size),
    matrixTable(
      `${id}-b`,
      'B, coupling stiffness: zero when bending and stretching do not mix',
      s.B,
      'couplingStiffness',
      size * s.thickness,
    ),
    matrixTable(`${id}-d`, 'D, bending stiffness', s.D, 'bendingStiffness', size * s.thickness ** 2),
  ];
}

const constantNames = [
  ['Ex', 'modulus'],
  ['Ey', 'modulus'],
  ['Gxy', 'modulus'],
  ['nuxy', 'number'],
  ['nuyx', 'number'],
  ['etaxyx', 'number'],
  ['etaxyy', 'number'],
] as const;
const symbols: Record<(typeof constantNames)[number][0], string> = {
  Ex: 'Ex',
  Ey: 'Ey',
  Gxy: 'Gxy',
  nuxy: 'νxy',
  nuyx: 'νyx',
  etaxyx: 'ηxy,x',
  etaxyy: 'ηxy,y',
};

function constantsTable({ constants, diagnosis }: LaminateResult, id: string): Block {
  const free = [
    ['In plane', constants.inPlane],
    ['Bending', constants.flexural],
  ] as const;
  const held = [
    ['In plane, held flat', constants.inPlaneRestrained],
    ['Bending, mid-plane held', constants.flexuralRestrained],
  ] as const;
  const columns = diagnosis.uncoupled ? free : [...free, ...held];
  const rows = constantNames.map(([name, kind]): Cell[] => [
    symbols[name],
    ...columns.map(([, set]) => amount(withoutNoise(set[name], kind === 'modulus' ? set.Ex : 1), kind)),
  ]);
  return table(
    `${id}-constants`,
    diagnosis.uncoupled
      ? 'Engineering constants'
      : 'Engineering constants: free to warp, and held where B couples bending to stretching',
    [{ label: '' }, ...columns.map(([label]) => ({ label }))],
    rows,
  );
}

function polar(result: LaminateResult, id: string, units: UnitSystem): Block {
  const angles = Array.from({ length: 73 }, (_, i) => i * 5);
  const constants = angles.map((angle) => offAxisConstants(result.stiffness, angle));
  return polarFigure({
    id: `${id}-polar`,
    title: `Stiffness of ${result.model.title ?? result.model.name} in every direction`,
    angles,
    curves: [
      { label: 'Ex(θ)', values: constants.map((one) => one.Ex), kind: 'modulus' },
      { label: 'Gxy(θ)', values: constants.map((one) => one.Gxy), kind: 'modulus' },
    ],
    units,
  });
}

function parametersTable({ laminationParameters: v }: LaminateResult, id: string): Block {
  const rows = (['A', 'B', 'D'] as const).map((name): Cell[] => [
    name,
    ...v[name].map((value) => amount(withoutNoise(value, 1), 'number')),
  ]);
  return table(
    `${id}-parameters`,
    'Lamination parameters',
    [{ label: '' }, ...['V1', 'V2', 'V3', 'V4'].map((label) => ({ label, kind: 'number' as const }))],
    rows,
  );
}

/** Everything the report says about one laminate. */
export function laminateSection(result: LaminateResult, units: UnitSystem): Block[] {
  const { model } = result;
  const id = `laminate-${slug(model.name)}`;
  return [
    heading(2, model.title === undefined ? `Laminate ${model.name}` : `${model.title} (laminate ${model.name})`, id),
    ...(model.note === undefined ? [] : listOf([model.note])),
    facts(result),
    stackFigure({
      id: `${id}-stack`,
      title: `Stack of ${model.title ?? model.name}`,
      plies: model.laminate.plies.map((ply) => ({
        name: ply.name,
        angle: ply.angle,
        thickness: ply.thickness,
        kind: bandKind(ply),
      })),
      units,
    }),
    plyTable(result, id),
    heading(3, 'What kind of laminate it is', `${id}-diagnosis`),
    ...listOf(diagnosisStatements(result.diagnosis, units)),
    heading(3, 'Stiffness', `${id}-stiffness`),
    constantsTable(result, id),
    polar(result, id, units),
    ...stiffnessTables(result, id),
    parametersTable(result, id),
    ...laminateShear(result, id),
    ...laminateSandwich(result, id),
    { kind: 'notes', notes: result.notes },
    ...laminateExpansion(result, id, units),
    ...laminateEdge(result, id, units),
    ...laminatePanel(result, id, units),
    ...laminateBlister(result, id, units),
  ];
}
