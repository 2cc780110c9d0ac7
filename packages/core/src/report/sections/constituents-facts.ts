import type { CuredFabric } from '../../design/index.js';
import type { CrimpChoice, Weave } from '../../material/index.js';
import type { Cell } from '../blocks.js';
import { amount } from './build.js';

type Fact = { readonly label: string; readonly value: Cell; readonly remark?: string };

const architectures = {
  ud: 'unidirectional',
  woven: 'woven',
  multiaxial: 'multiaxial',
  mat: 'chopped mat',
} as const;

const rounded = (value: number, digits: number): string => String(Number(value.toPrecision(digits)));

/** The dry fabric, and the share of each of its fibres when there is more than one. */
function dry({ fabric, fibres }: CuredFabric): Fact[] {
  const { architecture, arealMass, weave, weftFibre, fibre, layers } = fabric;
  const lay = layers === undefined ? '' : `, ${layers.map(({ angle }) => `${angle}°`).join('/')}`;
  const kind = `${architectures[architecture]}${weave === undefined ? '' : ` ${weave}`}${lay}`;
  const [only] = fibres;
  const whole = { label: 'Dry fabric', value: amount(arealMass, 'arealMass') };
  if (fibres.length === 1) return [{ ...whole, remark: `${kind}, ${only?.name ?? ''}` }];
  const place = (name: string): string => (weftFibre === undefined ? '' : name === fibre.name ? ', warp' : ', weft');
  const parts = fibres.map((one) => ({
    label: `of it ${one.name}${place(one.name)}`,
    value: amount(one.arealMass, 'arealMass'),
  }));
  return [{ ...whole, remark: `${kind}, of ${fibres.length} fibres` }, ...parts];
}

/** Where the crimp factors come from. */
function crimpRemark({ basis, geometry }: CrimpChoice, weave: Weave | undefined, yarn: 'warp' | 'weft'): string {
  if (basis === 'given') return 'as given';
  if (geometry === undefined) return `usual for a ${weave ?? 'plain'} weave (common practice, no source)`;
  const high = geometry.high?.[yarn === 'warp' ? 'E1' : 'E2'];
  const tilt = `low estimate, from yarns tilted by up to ${rounded(geometry[yarn].angle, 3)}°`;
  return high === undefined ? tilt : `${tilt}; high estimate ${high.toFixed(3)}`;
}

/** The counts that decide the crimp. */
function yarnFacts({ yarnCount, weftCount = yarnCount }: CuredFabric['fabric']): Fact[] {
  if (yarnCount === undefined || weftCount === undefined) return [];
  return [
    { label: 'Warp yarns', value: amount(yarnCount, 'perLength'), remark: 'per width' },
    { label: 'Weft yarns', value: amount(weftCount, 'perLength'), remark: 'per length' },
  ];
}

function crimpFacts({ crimp, fabric }: CuredFabric): Fact[] {
  if (crimp === undefined) return [];
  const one = (label: string, factor: number, yarn: 'warp' | 'weft'): Fact => ({
    label,
    value: amount(factor, 'number', 3),
    remark: crimpRemark(crimp, fabric.weave, yarn),
  });
  if (crimp.geometry === undefined) return [one('Crimp factor', crimp.k1, 'warp')];
  return [one('Crimp factor, warp', crimp.k1, 'warp'), one('Crimp factor, weft', crimp.k2, 'weft')];
}

/** Moduli of what the unidirectional layers become together, where that is one ply. */
function plyFacts({ fabric, plies }: CuredFabric): Fact[] {
  const [ply] = plies;
  if (ply === undefined) return [];
  if (fabric.architecture === 'mat')
    return [{ label: 'E of the mat', value: amount(ply.E1, 'modulus'), remark: 'in every direction' }];
  if (fabric.architecture !== 'woven') return [];
  return [
    { label: 'E1 of the cloth', value: amount(ply.E1, 'modulus'), remark: 'along the warp' },
    { label: 'E2 of the cloth', value: amount(ply.E2, 'modulus'), remark: 'along the weft' },
  ];
}

const hasStrengths = ({ plies }: CuredFabric): boolean => plies.some((ply) => ply.strengths !== undefined);

/** Masses, thickness, voids and crimp of a fabric at one fibre fraction. */
export function constituentFacts(state: CuredFabric): Fact[] {
  const { fabric, laminates, thickness, arealMass, resinArealMass } = state;
  const { voidFraction = 0, voidModel } = fabric;
  return [
    ...dry(state),
    {
      label: 'Fibre fraction',
      value: amount(fabric.fibreVolumeFraction, 'fraction'),
      remark: `in laminate${laminates.length > 1 ? 's' : ''} ${laminates.join(', ')}`,
    },
    { label: 'Thickness', value: amount(thickness, 'length') },
    { label: 'Areal mass, cured', value: amount(arealMass, 'arealMass') },
    { label: 'Resin', value: amount(resinArealMass, 'arealMass'), remark: fabric.resin.name },
    { label: 'Resin content', value: amount(resinArealMass / arealMass, 'fraction', 3), remark: 'by mass' },
    ...(voidFraction > 0
      ? [
          {
            label: 'Voids',
            value: amount(voidFraction, 'fraction', 3),
            remark:
              voidModel === 'porous-matrix' ? 'they soften the resin, as spherical pores' : 'they lower the mass only',
          },
        ]
      : []),
    ...yarnFacts(fabric),
    ...crimpFacts(state),
    ...plyFacts(state),
    ...(hasStrengths(state)
      ? [{ label: 'Strengths', value: 'as given', remark: 'not scaled with the fibre fraction' }]
      : []),
  ];
}
