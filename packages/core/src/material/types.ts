import type { Note, SourceKey } from '../provenance/index.js';

/** Reinforcing fibre, transversely isotropic about its axis 1. SI units. */
export interface Fibre {
  readonly name: string;
  /** Pa */
  readonly E1: number;
  readonly E2: number;
  readonly G12: number;
  readonly nu12: number;
  /** When left out: nu12 if the moduli along and across are equal, else assumed with a note. */
  readonly nu23?: number;
  /** kg/m^3 */
  readonly density: number;
  /** 1/K */
  readonly alpha1?: number;
  readonly alpha2?: number;
  readonly sources: readonly SourceKey[];
}

/** Isotropic resin, cured. SI units. */
export interface Resin {
  readonly name: string;
  /** Pa */
  readonly E: number;
  readonly nu: number;
  /** kg/m^3 */
  readonly density: number;
  /** 1/K */
  readonly alpha?: number;
  /** Swelling strain per mass fraction of moisture in the resin. */
  readonly beta?: number;
  readonly sources: readonly SourceKey[];
}

/** In-plane strengths, all positive, Pa. */
export interface Strengths {
  readonly Xt: number;
  readonly Xc: number;
  readonly Yt: number;
  readonly Yc: number;
  readonly S: number;
}

/**
 * One homogeneous orthotropic layer in plane stress, with its place in a stack given by its angle.
 * SI units; `angle` in degrees from the laminate's x to the ply's axis 1, positive toward y.
 */
export interface Ply {
  readonly name: string;
  readonly angle: number;
  /** m */
  readonly thickness: number;
  /** Pa */
  readonly E1: number;
  readonly E2: number;
  readonly G12: number;
  readonly nu12: number;
  /** Transverse shear moduli, Pa, and the Poisson ratio of the plane across the fibre, where known. */
  readonly G13?: number;
  readonly G23?: number;
  readonly nu23?: number;
  /** Of a core: modulus and shear strength through the thickness, Pa, where known. */
  readonly E3?: number;
  readonly shearStrength?: number;
  /** kg/m^3; absent when a ply was given without it, then no mass is reported. */
  readonly density?: number;
  /** Dry reinforcement, kg/m^2, and resin, kg/m^2, where the constituents are known. */
  readonly fibreArealMass?: number;
  readonly resinArealMass?: number;
  readonly fibreVolumeFraction?: number;
  readonly voidFraction?: number;
  readonly strengths?: Strengths;
  /** 1/K */
  readonly expansion?: { readonly alpha1: number; readonly alpha2: number };
  /** Swelling strain per mass fraction of moisture in the ply. */
  readonly moistureExpansion?: { readonly beta1: number; readonly beta2: number };
  readonly core?: boolean;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/** How the modulus across the fibre or the shear modulus follows from fibre and resin. */
export type TransverseRule = 'halpin-tsai' | 'inverse' | 'chamis';

/** Choice of micromechanics; whatever is left out is Halpin-Tsai with xi = 2 for E2 and 1 for G12. */
export interface MicromechanicsModel {
  readonly E2?: TransverseRule;
  readonly G12?: TransverseRule;
  readonly xiE2?: number;
  readonly xiG12?: number;
}

/**
 * What voids do to a ply: lower its mass only, or also soften the resin between the fibres as spherical pores do.
 */
export type VoidModel = 'mass-only' | 'porous-matrix';

/** One unidirectional layer of a stitched fabric: its angle in the fabric, degrees, and its share of the fabric's mass. */
export interface FabricLayer {
  readonly angle: number;
  readonly share: number;
  /** That of the fabric when not given. */
  readonly fibre?: Fibre;
  /** Of this layer; those of the fabric when not given. */
  readonly strengths?: Strengths;
}

/** How the fibres of a dry reinforcement lie. */
export type Architecture = 'ud' | 'woven' | 'multiaxial' | 'mat';
/** How the yarns of a woven cloth cross. */
export type Weave = 'plain' | 'twill' | 'satin';
/** Random mat from the invariants of the unidirectional ply, or from the 3/8-5/8 approximation to them. */
export type MatModel = 'invariants' | 'tsai-pagano';

/** A dry reinforcement with the resin and the fibre fraction it will be moulded with. SI units. */
export interface Fabric {
  readonly name: string;
  readonly fibre: Fibre;
  readonly resin: Resin;
  /** Dry, kg/m^2. */
  readonly arealMass: number;
  readonly architecture: Architecture;
  readonly fibreVolumeFraction: number;
  readonly voidFraction?: number;
  /** `mass-only` when not given. */
  readonly voidModel?: VoidModel;
  readonly model?: MicromechanicsModel;
  /** Woven only: fibre of the weft; that of the warp, `fibre`, when not given. */
  readonly weftFibre?: Fibre;
  /** Woven only: decides the crimp factor when neither that nor the yarn count is given. */
  readonly weave?: Weave;
  /** Woven only: share of the fibre mass in the warp; 0.5 when not given. */
  readonly warpShare?: number;
  /** Woven only: what the crimp leaves of the cloth's moduli along warp and weft, over 0.5 to 1. */
  readonly crimpFactor?: number;
  /** Woven only: warp yarns per width of cloth, 1/m; the crimp then follows from the weave's own geometry. */
  readonly yarnCount?: number;
  /** Woven only: weft yarns per length of cloth, 1/m; as many as warp yarns when not given. */
  readonly weftCount?: number;
  /** Woven only: yarns in one repeat of the weave; 2 plain, 4 twill, 5 satin when not given. */
  readonly harness?: number;
  /** Multiaxial only: layers from the fabric's lower face up; the shares add up to 1. */
  readonly layers?: readonly FabricLayer[];
  /** Mat only. */
  readonly matModel?: MatModel;
  /** Strengths of each ply the fabric gives: of the cloth (woven), of the mat, or of one unidirectional layer. */
  readonly strengths?: Strengths;
}
