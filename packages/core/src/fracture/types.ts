import type { Note, SourceKey } from '../provenance/index.js';
import type { BridgingCurve, BridgingFailure } from '../stitch/index.js';

/** One arm of a specimen as a beam, per width. SI units. */
export interface Arm {
  /** m */
  readonly thickness: number;
  /** Bending stiffness about its neutral plane along the crack, N m, as `armOf` gives it. */
  readonly bendingStiffness: number;
  /** N/m; only where arms stretch. */
  readonly axialStiffness: number;
  /** Shear stiffness through the thickness, N/m; 5/6 G t for one homogeneous ply. */
  readonly shearStiffness: number;
  /** Modulus through the thickness, Pa: the bed on which the bonded part of the arm rests. */
  readonly E3: number;
  /** Surface strain at which the arm breaks, positive numbers; not checked when not given. */
  readonly failureStrain?: { readonly tension: number; readonly compression: number };
}

/** How a laminate becomes an arm. */
export interface ArmOptions {
  /**
   * Strain and curvature across the arm: held, as in an arm much wider than thick, which may shear but not twist; or free, as in a narrow strip (1/d11).
   * Held when not given.
   */
  readonly across?: 'held' | 'free';
  /** The face along the crack: `bottom` toward the bag (z = t/2), `top` toward the tool. The arm bends so that it is stretched. `bottom` when not given. */
  readonly crackFace?: 'bottom' | 'top';
  /** Modulus through the thickness, Pa; from the plies when not given. */
  readonly E3?: number;
  /** What counts as breaking: whatever fails first in a ply, or fibres only. `anything` when not given. */
  readonly breaking?: 'anything' | 'fibres';
}

/** A row of penetrations across the specimen, all at one distance from the load line. */
export interface BridgingRow {
  /** m, from the load line in the direction of growth. */
  readonly position: number;
  /** Penetrations in the row across the width, above 0; need not be whole. */
  readonly penetrations: number;
  /** Of one penetration. */
  readonly curve: BridgingCurve;
  readonly failure: BridgingFailure;
}

/** What can give way first. */
export type Verdict = 'bond' | BridgingFailure | 'arm';

/** Something that happens at a load. */
export interface SpecimenEvent {
  readonly kind: Verdict;
  /** N and m, at the moment. */
  readonly load: number;
  readonly displacement: number;
  /** m, from the load line. */
  readonly crackLength: number;
  /** Index of the row that gives way. */
  readonly row?: number;
  /** Toughness that a tester works out from the load at the moment, before any jump, J/m². */
  readonly byLoad: number;
}

/** A state on the way. Energies in J. */
export interface SpecimenState {
  readonly displacement: number;
  readonly load: number;
  readonly crackLength: number;
  /** Work done so far, and where it went. */
  readonly work: number;
  readonly elastic: number;
  readonly bond: number;
  readonly thread: number;
  /** Rubbed away between crack faces; absent where they do not rub. */
  readonly friction?: number;
  /** Set free in jumps at constant displacement, to motion and sound; absent while there were none. */
  readonly released?: number;
  /** Largest surface strain of an arm. */
  readonly armStrain: number;
}

/** Toughness against growth, J/m²: from the load by beam theory, and from the energy that the growth took. */
export interface ResistancePoint {
  readonly growth: number;
  readonly byLoad: number;
  readonly byArea: number;
}

/** A specimen pulled to its end. */
export interface SpecimenResult {
  readonly states: readonly SpecimenState[];
  readonly events: readonly SpecimenEvent[];
  readonly resistance: readonly ResistancePoint[];
  /** N */
  readonly peakForce: number;
  /** Largest share of its failure strain that an arm reached; absent where none is known. */
  readonly armShare?: number;
  /** Longest stretch of crack bridged at once, m; 0 without rows. */
  readonly zoneLength: number;
  /** What limits it - the arm if one breaks, else the rows that give way at the highest load, else the bond - and the load borne until then, N; what would be next, and by what factor of load it is further; both absent when nothing else is in reach. */
  readonly verdict: {
    readonly first: Verdict;
    readonly load: number;
    readonly next?: Verdict;
    readonly margin?: number;
  };
  /** |work - elastic - bond - thread - friction - released| over work, at its worst. */
  readonly energyError: number;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}
