import * as z from 'zod/mini';
import { claimKeys, layersOfFabric, modelKeys, weaveKeys } from './fabric-keys.js';
import {
  choice,
  fibreContent,
  quantity,
  reference,
  section,
  solidDensity,
  solidExpansion,
  solidModulus,
  text,
} from './fields.js';

/** Where the numbers of an entry come from; shown in every report that uses them. */
const provenance = {
  label: z.optional(text('a name for readers')),
  source: z.optional(text('where the values come from: own test and date, certificate, publication')),
  basis: z.optional(choice('a basis', ['published', 'measured', 'derived', 'assumed', 'invented'])),
  note: z.optional(text('a remark')),
};

const strengths = section('strengths of a ply, all positive', {
  Xt: quantity('stress', 'tension along 1', { above: 0 }),
  Xc: quantity('stress', 'compression along 1', { above: 0 }),
  Yt: quantity('stress', 'tension along 2', { above: 0 }),
  Yc: quantity('stress', 'compression along 2', { above: 0 }),
  S: quantity('stress', 'in-plane shear', { above: 0 }),
});

const expansion = section('thermal expansion of a ply', {
  alpha1: quantity('expansion', 'along 1', solidExpansion),
  alpha2: quantity('expansion', 'along 2', solidExpansion),
});

const moistureExpansion = section('swelling of a ply per mass fraction of moisture', {
  beta1: quantity('number', 'along 1', { min: 0 }),
  beta2: quantity('number', 'along 2', { min: 0 }),
});

const fibre = section('a reinforcing fibre', {
  kind: z.literal('fibre'),
  E1: quantity('modulus', 'modulus along the fibre', solidModulus),
  E2: quantity('modulus', 'modulus across the fibre', solidModulus),
  G12: quantity('modulus', 'shear modulus', solidModulus),
  nu12: quantity('number', 'Poisson ratio', { min: -1, max: 1 }),
  nu23: z.optional(quantity('number', 'transverse Poisson ratio', { min: -1, max: 1 })),
  density: quantity('density', 'density', solidDensity),
  alpha1: z.optional(quantity('expansion', 'expansion along the fibre', solidExpansion)),
  alpha2: z.optional(quantity('expansion', 'expansion across the fibre', solidExpansion)),
  ...provenance,
});

const resin = section('a cured resin', {
  kind: z.literal('resin'),
  E: quantity('modulus', 'modulus', solidModulus),
  nu: quantity('number', 'Poisson ratio', { min: 0, below: 0.5 }),
  density: quantity('density', 'density', solidDensity),
  alpha: z.optional(quantity('expansion', 'expansion', solidExpansion)),
  beta: z.optional(quantity('number', 'swelling per mass fraction of moisture', { min: 0 })),
  ...provenance,
});

const plyMaterial = section('a ply given by its own constants', {
  kind: z.literal('ply'),
  from: z.optional(reference('a ply of the library that fills in what is not given here')),
  E1: z.optional(quantity('modulus', 'modulus along 1', solidModulus)),
  E2: z.optional(quantity('modulus', 'modulus along 2', solidModulus)),
  G12: z.optional(quantity('modulus', 'in-plane shear modulus', solidModulus)),
  nu12: z.optional(quantity('number', 'major Poisson ratio')),
  G13: z.optional(quantity('modulus', 'shear modulus through the thickness, along 1; by default G12', solidModulus)),
  G23: z.optional(quantity('modulus', 'shear modulus through the thickness, along 2; else assumed', solidModulus)),
  nu23: z.optional(quantity('number', 'Poisson ratio across the fibre, for a G23 that is not given')),
  thickness: quantity('length', 'cured thickness', { above: 0, max: 0.1 }),
  density: z.optional(quantity('density', 'density', solidDensity)),
  fibreVolumeFraction: z.optional(quantity('fraction', 'fibre volume fraction', { above: 0, below: 1 })),
  ...claimKeys,
  strengths: z.optional(strengths),
  expansion: z.optional(expansion),
  moistureExpansion: z.optional(moistureExpansion),
  ...provenance,
});

const architectures = ['ud', 'woven', 'multiaxial', 'mat'] as const;
const weaves = ['plain', 'twill', 'satin'] as const;

const fabric = section('a dry fabric that becomes plies with resin', {
  kind: z.literal('fabric'),
  from: z.optional(reference('a fabric of the library that fills in what is not given here')),
  fibre: z.optional(reference('a fibre of this file or of the library')),
  resin: reference('a resin of this file or of the library'),
  arealMass: z.optional(quantity('arealMass', 'dry areal mass', { above: 0, max: 20 })),
  architecture: z.optional(choice('an architecture', architectures)),
  weave: z.optional(choice('a weave', weaves)),
  warpShare: z.optional(quantity('fraction', 'share of the areal mass in the warp', { above: 0, below: 1 })),
  crimpFactor: z.optional(quantity('number', 'factor on the moduli of a cloth for its crimp', { above: 0.5, max: 1 })),
  ...weaveKeys,
  layers: layersOfFabric(strengths),
  fibreVolumeFraction: z.optional(quantity('fraction', 'fibre volume fraction', fibreContent)),
  voidFraction: z.optional(quantity('fraction', 'void fraction', { min: 0, max: 0.2 })),
  ...modelKeys,
  strengths: z.optional(strengths),
  ...provenance,
});

const core = section('a core', {
  kind: z.literal('core'),
  from: z.optional(reference('a core of the library that fills in what is not given here')),
  thickness: quantity('length', 'thickness', { above: 0, max: 0.5 }),
  E: z.optional(quantity('modulus', 'modulus', solidModulus)),
  G: z.optional(quantity('modulus', 'shear modulus', solidModulus)),
  E3: z.optional(quantity('modulus', 'modulus through the thickness, for face wrinkling; by default E', solidModulus)),
  S: z.optional(quantity('stress', 'shear strength through the thickness', { above: 0 })),
  nu: z.optional(quantity('number', 'Poisson ratio', { min: 0, below: 0.5 })),
  density: z.optional(quantity('density', 'density', { min: 10, max: 25_000 })),
  alpha: z.optional(quantity('expansion', 'thermal expansion in the plane', solidExpansion)),
  ...provenance,
});

const materialKinds = ['fibre', 'resin', 'ply', 'fabric', 'core'] as const;

/** One entry of `materials`, told apart by `kind`. */
export const material = z.discriminatedUnion('kind', [fibre, resin, plyMaterial, fabric, core], {
  error: () => materialKinds.join(', '),
});

export const threadEntry = section('a sewing thread', {
  from: z.optional(reference('a thread of the library that fills in what is not given here')),
  linearDensity: z.optional(quantity('linearDensity', 'linear density', { above: 0, max: 1e-2 })),
  density: z.optional(quantity('density', 'density of the fibre', solidDensity)),
  tenacity: z.optional(quantity('tenacity', 'tenacity', { above: 0 })),
  modulus: z.optional(quantity('threadModulus', 'modulus', { above: 0 })),
  packing: z.optional(quantity('fraction', 'packing of the fibres in the cured thread', { min: 0.3, max: 0.91 })),
  ...provenance,
});
