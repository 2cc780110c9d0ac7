import { fail, type Path, SelvageError } from '../../problem/index.js';
import { type BridgingLaw, hasUnderThread, measuredBridgingLaw, stitchType, type Thread } from '../../stitch/index.js';
import type { StitchBridgingModel } from '../model.js';
import type { BridgingEntry, StitchingEntry } from '../schema/design.js';
import { defined } from './constituents.js';

/**
 * What a stitch plan says of how one stitch holds a crack; nothing when it says nothing.
 * @param path of the plan
 * @throws contradiction, out-of-range each at the key at fault
 */
export function bridgingOf(
  entry: StitchingEntry,
  threads: { readonly needle: Thread; readonly under: Thread | undefined },
  path: Path,
): StitchBridgingModel {
  const { bridging } = entry;
  if (bridging === undefined) return { parameters: {} };
  const at = [...path, 'bridging'];
  checkLean(entry, bridging, at);
  checkHold(bridging, at);
  checkPacking(entry, bridging, threads, at);
  checkBends(bridging, at);
  const { needleFace, underFace, legAngle, measured } = bridging;
  return defined({
    parameters: defined({
      frictionStress: bridging.friction,
      sewnEfficiency: bridging.sewnEfficiency,
      anchorEfficiency: bridging.lockEfficiency,
      tenacityFactor: bridging.strengthFactor,
      modulusFactor: bridging.stiffnessFactor,
      packing: bridging.packing,
      beddingIn: bridging.beddingIn,
      siteScatter: bridging.scatter,
      bearingPressure: bridging.bearingPressure,
      bearingWidth: bridging.bearingWidth,
    }),
    anchors: needleFace === undefined && underFace === undefined ? undefined : defined({ needleFace, underFace }),
    bends: bridging.bends,
    legAngle,
    measured: measured === undefined ? undefined : measuredLaw(measured, [...at, 'measured']),
    measuredVariation: measured?.variation,
  });
}

function checkLean({ pattern }: StitchingEntry, { legAngle, measured }: BridgingEntry, path: Path): void {
  if (legAngle === undefined) return;
  const at = [...path, 'legAngle'];
  if (pattern !== 'zigzag') {
    fail({
      code: 'contradiction',
      message: `\`legAngle\` is for the pattern \`zigzag\`, this one is \`${pattern}\``,
      allowed: '`legAngle` only with `pattern: zigzag`',
      path: at,
      atKey: true,
    });
  }
  if (measured !== undefined) {
    fail({
      code: 'contradiction',
      message: '`legAngle` is given beside a measured curve, which holds the lean of its own legs',
      allowed: 'one of the two',
      path: at,
      atKey: true,
      also: [{ label: 'the measured curve', path: [...path, 'measured'] }],
    });
  }
}

/** Bends that yield sink in by their own law. */
function checkBends({ bends, beddingIn }: BridgingEntry, path: Path): void {
  if (bends !== 'yielding' || beddingIn === undefined) return;
  fail({
    code: 'contradiction',
    message: '`beddingIn` is given for bends that yield, which bed in by their own law',
    allowed: 'one of `beddingIn` and `bends: yielding`',
    path: [...path, 'beddingIn'],
    atKey: true,
    also: [{ label: 'bends that yield', path: [...path, 'bends'] }],
  });
}

/** A leg that nothing anchors and nothing rubs on. */
function checkHold({ friction, needleFace, underFace }: BridgingEntry, path: Path): void {
  if (friction !== 0 || (needleFace !== 'none' && underFace !== 'none')) return;
  fail({
    code: 'contradiction',
    message: '`friction` is 0 and a face does not hold the thread: such a stitch holds nothing',
    allowed: 'friction above 0, or `surface` at both faces',
    path: [...path, 'friction'],
    also: [{ label: 'the open face', path: [...path, needleFace === 'none' ? 'needleFace' : 'underFace'] }],
  });
}

/** A packing that no thread would take. */
function checkPacking(
  entry: StitchingEntry,
  { packing }: BridgingEntry,
  { needle, under = needle }: { readonly needle: Thread; readonly under: Thread | undefined },
  path: Path,
): void {
  const used = hasUnderThread(stitchType(entry.stitchType)) ? [needle, under] : [needle];
  if (packing === undefined || used.some((thread) => thread.packing === undefined)) return;
  const names = [...new Set(used.map(({ name }) => `\`${name}\``))];
  fail({
    code: 'contradiction',
    message: `\`packing\` is given, and ${names.length === 1 ? `thread ${names[0]} has its own` : `threads ${names.join(' and ')} have their own`}`,
    allowed: 'the packing once, with the thread or here',
    path: [...path, 'packing'],
    atKey: true,
    also: [{ label: 'given with the thread', path: ['threads', needle.name, 'packing'] }],
  });
}

/** The measured curve; a fault of one point is placed at that point. */
function measuredLaw(
  { opening, force, failure, cutOff }: NonNullable<BridgingEntry['measured']>,
  path: Path,
): BridgingLaw {
  if (opening.length !== force.length) {
    fail({
      code: 'contradiction',
      message: `a measured curve of ${opening.length} openings and ${force.length} forces`,
      allowed: 'as many forces as openings',
      path: [...path, 'force'],
      also: [{ label: 'the openings', path: [...path, 'opening'] }],
    });
  }
  const points = opening.map((one, i) => ({ opening: one, force: force[i] ?? 0 }));
  try {
    return measuredBridgingLaw(points, failure, defined({ cutOff }));
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    throw new SelvageError(
      error.problems.map((problem) => ({ ...problem, path: [...path, ...pointPath(problem.message, points.length)] })),
    );
  }
}

/** The point that a message begins with ("opening of point 3 = ...", "force of the last point ..."). */
function pointPath(message: string, count: number): Path {
  const [, list = 'opening', which] = /^(opening|force) of (?:the )?(?:point )?(\d+|first|last)/.exec(message) ?? [];
  if (which === undefined) return [/without force/.test(message) ? 'force' : list];
  return [list, which === 'first' ? 0 : which === 'last' ? count - 1 : Number(which) - 1];
}
