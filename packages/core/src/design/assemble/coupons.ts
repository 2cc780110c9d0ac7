import { type ArmOptions, armOf, type LaminateArm } from '../../fracture/index.js';
import { diagnosis } from '../../laminate/index.js';
import type { Path } from '../../problem/index.js';
import { type Note, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import type { CouponModel, LaminateModel, StitchingModel } from '../model.js';
import type { CouponEntry } from '../schema/design.js';
import { defined } from './constituents.js';
import { attempt, type Context, unknownName } from './context.js';
import { keyProblems } from './coupon-keys.js';
import { lengthsOf, placeProblems, specimenOf } from './coupon-specimen.js';
import { couponStitching, demandStrength, type Stack } from './coupon-stitching.js';

/** What a coupon may name; undefined for what has problems of its own. */
interface Named {
  readonly laminates: ReadonlyMap<string, LaminateModel | undefined>;
  readonly stitching: ReadonlyMap<string, StitchingModel | undefined>;
}

/** The coupons of a design; what is missing, contradicts itself or does not fit is noted at its key. */
export function assembleCoupons(context: Context, named: Named): CouponModel[] {
  return Object.entries(context.design.coupons ?? {}).flatMap(
    ([name, entry]) => assembleCoupon(context, named, name, entry) ?? [],
  );
}

function assembleCoupon(context: Context, named: Named, name: string, entry: CouponEntry): CouponModel | undefined {
  const path = ['coupons', name];
  const before = context.problems.length;
  const names: readonly [string, string] = typeof entry.arms === 'string' ? [entry.arms, entry.arms] : entry.arms;
  const armPath = (i: number): Path => [...path, 'arms', ...(typeof entry.arms === 'string' ? [] : [i])];
  names.forEach((arm, i) => {
    if (!named.laminates.has(arm))
      context.problems.push(unknownName('laminate', arm, [...named.laminates.keys()], armPath(i)));
  });
  if (entry.stitching !== undefined && !named.stitching.has(entry.stitching)) {
    const known = [...named.stitching.keys()];
    context.problems.push(unknownName('stitch plan', entry.stitching, known, [...path, 'stitching']));
  }
  const keys = keyProblems(entry, path);
  const complete = !keys.some(({ code }) => code === 'missing-key');
  const show = lengthsOf(context.design);
  const places = complete ? placeProblems(entry, path, show) : [];
  context.problems.push(...keys, ...places);
  const plan = entry.stitching === undefined ? undefined : named.stitching.get(entry.stitching);
  if (plan !== undefined) attempt(context, [...path, 'stitching'], () => demandStrength(context.design, plan));
  const [upper, lower] = names.map((arm) => named.laminates.get(arm));
  if (upper === undefined || lower === undefined) return undefined;
  const armOptions = armOptionsOf(entry);
  const arms = armsOf(context, [upper, lower], armOptions, armPath);
  const fits = complete && places.length === 0;
  const stitched =
    plan === undefined || !fits
      ? undefined
      : attempt(context, path, () =>
          couponStitching({ entry, path, plan, show, stack: stackOf(named, plan, [upper, lower]) }),
        );
  if (
    arms === undefined ||
    context.problems.length > before ||
    (entry.stitching !== undefined && stitched === undefined)
  )
    return undefined;
  const { bondToughnessRange: range, test } = entry;
  return defined({
    name,
    title: entry.title,
    note: entry.note,
    coupon: defined({
      specimen: specimenOf(entry, [plain(arms[0]), plain(arms[1])]),
      stitching: stitched?.stitching,
      bondToughnessRange: range === undefined ? undefined : { low: range[0], high: range[1] },
    }),
    arms: names,
    armOptions,
    stitching: entry.stitching,
    test: test === undefined ? undefined : defined(test),
    notes: uniqueNotes([
      ...unlikeFaces(names, upper),
      ...(stitched?.notes ?? []),
      ...arms.flatMap(({ notes }) => notes),
    ]),
    sources: uniqueSources(...arms.map(({ sources }) => sources)),
  });
}

function stackOf(
  { laminates }: Named,
  { laminate }: StitchingModel,
  arms: readonly [LaminateModel, LaminateModel],
): Stack {
  const planned = laminate === undefined ? undefined : laminates.get(laminate);
  return {
    arms: [arms[0].laminate.thickness, arms[1].laminate.thickness],
    ...(planned === undefined ? {} : { planned: { name: planned.name, thickness: planned.laminate.thickness } }),
  };
}

/** Upper and lower arm; each has its crack face on the side of the other. */
function armOptionsOf({ across, breaking }: CouponEntry): readonly [ArmOptions, ArmOptions] {
  const both = defined({ across, breaking });
  return [
    { crackFace: 'bottom', ...both },
    { crackFace: 'top', ...both },
  ];
}

function armsOf(
  context: Context,
  laminates: readonly [LaminateModel, LaminateModel],
  options: readonly [ArmOptions, ArmOptions],
  path: (i: number) => Path,
): readonly [LaminateArm, LaminateArm] | undefined {
  const arm = (i: 0 | 1) => attempt(context, path(i), () => armOf(laminates[i].laminate, options[i]));
  const [first, second] = [arm(0), arm(1)];
  return first === undefined || second === undefined ? undefined : [first, second];
}

const plain = ({ notes: _, sources: __, ...arm }: LaminateArm) => arm;

/** One laminate that is not the same from both sides meets the crack with unlike faces. */
function unlikeFaces([upper, lower]: readonly [string, string], { laminate }: LaminateModel): Note[] {
  if (upper !== lower || diagnosis(laminate).symmetric) return [];
  const text = `both arms are laminate ${upper} as written: the crack lies at the bag side of the upper one and at the tool side of the lower one, which differ`;
  return [{ level: 'assumption', text }];
}
