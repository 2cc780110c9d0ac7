import * as z from 'zod/mini';
import { choice, listOf, quantity, reference, section } from './fields.js';

/** How a cloth is woven and of what yarns: its crimp, and its mass, follow. */
export const weaveKeys = {
  yarnCount: z.optional(
    quantity('perLength', 'warp yarns per width of the cloth; its crimp follows', { above: 0, max: 20_000 }),
  ),
  weftCount: z.optional(
    quantity('perLength', 'weft yarns per length of the cloth; as many as warp yarns when not given', {
      above: 0,
      max: 20_000,
    }),
  ),
  harness: z.optional(
    quantity('number', 'yarns in one repeat of the weave; 2 plain, 4 twill, 5 satin when not given', {
      min: 2,
      max: 24,
    }),
  ),
  yarnLinearDensity: z.optional(
    quantity('linearDensity', 'linear density of a warp yarn; areal mass and warp share then follow from the counts', {
      above: 0,
      max: 1e-2,
    }),
  ),
  weftLinearDensity: z.optional(
    quantity('linearDensity', 'linear density of a weft yarn; that of a warp yarn when not given', {
      above: 0,
      max: 1e-2,
    }),
  ),
  weftFibre: z.optional(reference('fibre of the weft of a hybrid cloth; that of the warp, `fibre`, when not given')),
};

const elasticModels = ['halpin-tsai', 'inverse', 'chamis'] as const;

/** By which models plies follow from fibre and resin. */
export const modelKeys = {
  transverseModel: z.optional(choice('a model of the transverse and shear moduli', elasticModels)),
  shearModel: z.optional(
    choice('a model of the shear modulus alone; that of transverseModel when not given', elasticModels),
  ),
  xi: z.optional(
    section('measure of reinforcement of the Halpin-Tsai equation', {
      E2: z.optional(quantity('number', 'for the modulus across the fibre; 2 when not given', { min: 0, max: 1e4 })),
      G12: z.optional(quantity('number', 'for the shear modulus; 1 when not given', { min: 0, max: 1e4 })),
    }),
  ),
  voidModel: z.optional(
    choice('what voids do: lower the mass only, or also soften the resin as spherical pores', [
      'mass-only',
      'porous-matrix',
    ]),
  ),
  matModel: z.optional(
    choice('how a mat follows from its fibres: average over all angles, or the 3/8-5/8 approximation', [
      'invariants',
      'tsai-pagano',
    ]),
  ),
};

/** Layers of a multiaxial; `strengths` are given by the caller, which holds the section of the same name. */
export const layersOfFabric = <Strengths extends z.core.$ZodType>(strengths: Strengths) =>
  z.optional(
    listOf(
      'layers of a multiaxial fabric, from its lower face up',
      section('one layer of a multiaxial fabric', {
        angle: quantity('angle', 'angle of the layer in the fabric', { min: -180, max: 180 }),
        arealMass: quantity('arealMass', 'dry areal mass of the layer', { above: 0 }),
        fibre: z.optional(reference('fibre of this layer of a hybrid fabric; that of the fabric when not given')),
        strengths: z.optional(strengths),
      }),
      12,
    ),
  );

/** What a ply given by its constants is said to be made of: compared with it, never used to change it. */
export const claimKeys = {
  fibre: z.optional(reference('its fibre, of this file or of the library: E1 is then compared with the constituents')),
  resin: z.optional(reference('its resin, of this file or of the library')),
  architecture: z.optional(choice('how the fibres of the ply lie, for the comparison', ['ud', 'woven'])),
  warpShare: z.optional(
    quantity('fraction', 'share of the fibre in the warp of a cloth, for the comparison', { above: 0, below: 1 }),
  ),
};
