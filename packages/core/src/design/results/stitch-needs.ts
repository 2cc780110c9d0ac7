import type { Note } from '../../provenance/index.js';
import { stitchType, type Thread } from '../../stitch/index.js';
import type { LaminateModel, StitchingModel } from '../model.js';

/** The threads that cross a crack at mid-plane: of a lock there, both. */
function crossing({ plan }: StitchingModel): Thread[] {
  const { legsAbove, legsBelow, lockDepth } = stitchType(plan.type);
  const legs = lockDepth < 1 ? [legsAbove, legsBelow] : [legsAbove];
  const { needleThread, underThread = needleThread } = plan;
  const threads = [
    ...(legs.some(({ needle }) => needle > 0) ? [needleThread] : []),
    ...(legs.some(({ under }) => under > 0) ? [underThread] : []),
  ];
  return [...new Map(threads.map((thread) => [thread.name, thread])).values()];
}

/** Values that the law of one stitch needs and the design does not give, in words. */
export function missingForLaw(model: StitchingModel, laminate: LaminateModel | undefined): string[] {
  const threads = crossing(model).flatMap((thread) =>
    (['tenacity', 'modulus'] as const).flatMap((key) =>
      thread[key] === undefined ? [`the ${key} of thread ${thread.name}`] : [],
    ),
  );
  return [...missingLaminate(laminate), ...threads];
}

/** What is wanting of the laminate; a core is no laminate that splits at mid-plane. */
export function missingLaminate(laminate: LaminateModel | undefined): string[] {
  if (laminate === undefined) return ['the laminate that is stitched (laminate)'];
  const core = laminate.laminate.plies.find((ply) => ply.core === true);
  return core === undefined ? [] : [`a laminate without a core (${laminate.name} has ${core.name})`];
}

/** Densities above which a thread is of glass, basalt or carbon, and below which of polyethylene, kg/m³. */
const [dense, light] = [1650, 1100];

/** Threads for which the usual values of strength left at a bend, or of friction, do not hold. */
export function threadCautions(model: StitchingModel): Note[] {
  const { anchorEfficiency, frictionStress } = model.bridging.parameters;
  return crossing(model).flatMap(({ name, density }): Note[] => {
    if (density > dense && anchorEfficiency === undefined) {
      const text = `thread ${name} is as dense as glass or carbon, which keep far less strength at a lock or bend than assumed here, glass 10 to 25 %, carbon 5 to 15 %: give bridging.lockEfficiency`;
      return [{ level: 'warning', text, source: 'common-practice' }];
    }
    if (density < light && frictionStress === undefined) {
      const text = `thread ${name} is as light as polyethylene, whose friction in resin lies at the low end of the usual range or below it: give bridging.friction`;
      return [{ level: 'warning', text, source: 'common-practice' }];
    }
    return [];
  });
}
