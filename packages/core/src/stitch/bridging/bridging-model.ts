import { fail } from '../../problem/index.js';
import type { Note } from '../../provenance/index.js';
import type { Working } from '../../working/index.js';
import { inMillimetres, requirePositive } from '../check.js';
import { hasUnderThread, type StitchType } from '../stitch-type.js';
import type { Thread } from '../types.js';
import { type BridgingParameters, bridgingParameters } from './bridging-parameters.js';
import type { BridgingModel, BridgingSide } from './bridging-sides.js';
import { type Bundle, bundleOf } from './bundle.js';
import { showBundle, showSide } from './model-steps.js';
import { type RodInput, rodModel } from './rod.js';
import { yieldingBend } from './yielding-bend.js';

/** What holds the far end of a leg at a face: the bend over the surface or the lock pulled to it, or nothing (tuft, pin, worn-off face). */
export type FaceAnchor = 'surface' | 'none';

/** One penetration and the plane of a crack through it. */
export interface PenetrationInput {
  readonly type: StitchType;
  /** With tenacity and modulus. */
  readonly needleThread: Thread;
  /** The needle thread again when not given. */
  readonly underThread?: Thread;
  /** Of the cured laminate, m. */
  readonly thickness: number;
  /** Of the crack plane under the needle face, m, between the faces; half the thickness when not given. */
  readonly crackDepth?: number;
  /** 'surface' where not given. */
  readonly anchors?: { readonly needleFace?: FaceAnchor; readonly underFace?: FaceAnchor };
  /**
   * How the bends over the faces give way: 'rigid', no more than the given bedding-in, or 'yielding', by the bed under them and the thread on
   * the face. 'rigid' where not given: the lower opening and work.
   */
  readonly bends?: 'rigid' | 'yielding';
  /** Distance to the next hole of the row, m; lets the thread on the face follow a yielding bend. */
  readonly pitch?: number;
  /** Measured or chosen values; the priors' where not given. */
  readonly parameters?: Partial<BridgingParameters>;
  /** What is taken where a value is not given, in place of the priors' single values. */
  readonly assumed?: Partial<BridgingParameters>;
}

type End = FaceAnchor | 'lock';

/** What all sides of a penetration share. */
interface Setting {
  readonly parameters: BridgingParameters;
  readonly bends: PenetrationInput['bends'];
  readonly halfPitch: number | undefined;
}

function sideOf(bundle: Bundle, depth: number, end: End, { parameters, bends, halfPitch }: Setting): BridgingSide {
  const anchorStrength = end === 'none' ? 0 : parameters.anchorEfficiency * bundle.strength;
  const yields = end === 'surface' && bends === 'yielding';
  const rigid = end === 'surface' && !yields;
  return {
    depth,
    axialStiffness: bundle.axialStiffness,
    slipResistance: bundle.slipResistance,
    lateralResistance: bundle.lateralResistance,
    anchorStrength,
    anchorCompliance: rigid ? (parameters.beddingIn * bundle.legDiameter) / anchorStrength : 0,
    ...(yields && { bend: yieldingBend(bundle, parameters, depth, halfPitch) }),
  };
}

/**
 * The strands, depths and anchors of a penetration on both sides of a crack plane.
 *
 * A crack between a face and a lock inside the stack crosses the thread of that side and has face and lock as anchors. A lock that lies within
 * one leg's diameter of the plane lies in it: then each side has its own thread, held at its face, and the lock is what breaks in the plane.
 * @throws missing-key thread without tenacity or modulus; out-of-range thickness not above 0, crack plane not between the faces, a parameter
 * outside its range or a pitch not above 0, see `checkThread`, `rodModel`; contradiction bedding-in given for bends that yield
 */
export function bridgingModel(
  input: PenetrationInput | RodInput,
  working?: Working,
): {
  readonly model: BridgingModel;
  readonly notes: readonly Note[];
} {
  if ('kind' in input) return rodModel(input, working);
  const { type, thickness, needleThread } = input;
  requirePositive('thickness', thickness, inMillimetres);
  const crackDepth = input.crackDepth ?? thickness / 2;
  if (!(crackDepth > 0 && crackDepth < thickness)) {
    fail({
      code: 'out-of-range',
      message: `crackDepth = ${inMillimetres(crackDepth)}, must lie inside the thickness of ${inMillimetres(thickness)}`,
      allowed: 'above 0 and below the thickness',
    });
  }
  const parameters = bridgingParameters({ ...input.assumed, ...input.parameters });
  const setting = settingOf(input, parameters);
  const threads = { needle: needleThread, under: input.underThread ?? needleThread };
  const [top, bottom]: readonly [End, End] = [
    input.anchors?.needleFace ?? 'surface',
    input.anchors?.underFace ?? 'surface',
  ];
  const lock = type.lockDepth * thickness;
  const above = bundleOf(type.legsAbove, threads, parameters);
  const below = type.lockDepth < 1 ? bundleOf(type.legsBelow, threads, parameters) : above;
  const notes: Note[] =
    hasUnderThread(type) && input.underThread === undefined
      ? [
          {
            level: 'assumption',
            text: `second thread taken to be the needle thread (${needleThread.name}), none given`,
          },
        ]
      : [];
  if (input.bends === 'yielding' && setting.halfPitch === undefined) {
    const text = 'no pitch given: the thread on the face is taken not to give way behind the bends';
    notes.push({ level: 'assumption', text });
  }
  const toLock = lock - crackDepth;
  const rest = thickness - crackDepth;
  const inside = type.lockDepth < 1;
  const geometry = { h: thickness, z_c: crackDepth };
  const toTheLock = { ...geometry, f_l: type.lockDepth, z_l: lock };
  const model = (first: Leg, second: Leg, crackStrength: number) => {
    const sides: BridgingModel['sides'] = [sideOf(...first, setting), sideOf(...second, setting)];
    if (working !== undefined) {
      for (const [i, [bundle, depth, end]] of [first, second].entries()) {
        const room = Math.min(depth, setting.halfPitch ?? depth);
        showSide(sides[i === 0 ? 0 : 1], bundle, parameters, end, room, working.part('sides', i + 1));
      }
    }
    return { model: { sides, crackStrength, siteScatter: parameters.siteScatter }, notes };
  };
  if (inside && Math.abs(toLock) < Math.max(above.legDiameter, below.legDiameter)) {
    notes.push({ level: 'assumption', text: 'the lock lies in the plane of the crack: it is what breaks there' });
    const F_c = parameters.anchorEfficiency * Math.min(above.strength, below.strength);
    if (working !== undefined) {
      working.step('legsAtLock', { ...toTheLock, l_1: crackDepth, l_2: rest });
      showBundle(type.legsAbove, threads, parameters, above, working.part('sides', 1));
      showBundle(type.legsBelow, threads, parameters, below, working.part('sides', 2));
    }
    const found = model([above, crackDepth, top], [below, rest, bottom], F_c);
    working?.step('lockSite', { eta_a: parameters.anchorEfficiency, F_t1: above.strength, F_t2: below.strength, F_c });
    return found;
  }
  const crossed = toLock > 0 ? above : below;
  const upper: Leg = toLock > 0 ? [crossed, crackDepth, top] : [crossed, -toLock, 'lock'];
  const lower: Leg = toLock > 0 && inside ? [crossed, toLock, 'lock'] : [crossed, rest, bottom];
  const F_c = parameters.sewnEfficiency * crossed.strength;
  if (working !== undefined) {
    const lengths = { l_1: upper[1], l_2: lower[1] };
    if (!inside) working.step('legsFaceToFace', { ...geometry, ...lengths });
    else working.step(toLock > 0 ? 'legsAboveLock' : 'legsBelowLock', { ...toTheLock, ...lengths });
    showBundle(toLock > 0 ? type.legsAbove : type.legsBelow, threads, parameters, crossed, working);
  }
  const found = model(upper, lower, F_c);
  working?.step('crackSite', { eta_s: parameters.sewnEfficiency, F_t: crossed.strength, F_c });
  return found;
}

/** The legs on one side, their length to the end, and what holds them there. */
type Leg = readonly [bundle: Bundle, depth: number, end: End];

function settingOf({ bends, pitch, parameters: given }: PenetrationInput, parameters: BridgingParameters): Setting {
  if (bends === 'yielding' && given?.beddingIn !== undefined) {
    fail({
      code: 'contradiction',
      message: `beddingIn = ${given.beddingIn} is given for bends that yield, which bed in by their own law`,
      hint: 'leave out beddingIn, or take rigid bends',
    });
  }
  if (pitch !== undefined) requirePositive('pitch', pitch, inMillimetres);
  return { parameters, bends, halfPitch: pitch === undefined ? undefined : pitch / 2 };
}
