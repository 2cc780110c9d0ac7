import { againstPrint, type CouponResult } from '../../../design/index.js';
import { formatQuantity, type UnitSystem } from '../../../quantity/index.js';
import type { Block, Cell } from '../../blocks.js';
import { amount, heading } from '../build.js';
import { peakState } from './record.js';
import { times } from './words.js';

type Fact = { readonly label: string; readonly value: Cell; readonly remark?: string };

/** The least strain at which an arm breaks; undefined when none is known. */
export function failureStrainOf({ model }: CouponResult): number | undefined {
  const limits = model.coupon.specimen.arms.flatMap(({ failureStrain }) =>
    failureStrain === undefined ? [] : [failureStrain.tension, failureStrain.compression],
  );
  return limits.length === 0 ? undefined : Math.min(...limits);
}

function strainFacts(one: CouponResult, units: UnitSystem): Fact[] {
  const { result, wedge } = one.prediction;
  const strain = wedge?.armStrain ?? (result === undefined ? undefined : peakState(result)?.armStrain);
  if (strain === undefined) return [];
  const limit = failureStrainOf(one);
  const label = wedge === undefined ? 'Surface strain of the arms at the peak' : 'Surface strain of the arms';
  if (limit === undefined) return [{ label, value: amount(strain, 'strain', 3), remark: 'no failure strain is known' }];
  const show = formatQuantity(limit, 'strain', { units, digits: 3 });
  const ratio = strain > 0 ? limit / strain : undefined;
  return [
    {
      label,
      value: amount(strain, 'strain', 3),
      remark: `they break at ${show}${ratio === undefined ? '' : `, ${times(ratio)} times that`}`,
    },
    ...(result?.armShare === undefined
      ? []
      : [
          {
            label: 'Largest share of that in the whole test',
            value: amount(result.armShare, 'fraction', 3) as Cell,
          },
        ]),
  ];
}

function balance({ prediction: { result } }: CouponResult, units: UnitSystem): Fact[] {
  if (result === undefined) return [];
  const last = result.states.at(-1);
  const jumps = (last?.released ?? 0) > 0 ? ' and what jumps set free' : '';
  return [
    {
      label: 'Energy balance',
      value: amount(result.energyError, 'fraction', 2),
      remark: `largest gap between the work done and what is stored, in bond and threads${jumps}, as a share of the work; below ${formatQuantity(0.005, 'fraction', { units })} is as it should be`,
    },
  ];
}

/** How far the prediction is to be trusted, in one sentence. */
function trust({ model, prediction }: CouponResult): string {
  const calibrated =
    prediction.calibrated === true ? ' Calibrated: test results of the same stitch have narrowed the ranges.' : '';
  if (model.coupon.stitching === undefined)
    return `The ranges come from the scatter of the bond's toughness; the error of the beam model is not in them.${calibrated}`;
  const error =
    prediction.law?.measured === true
      ? 'with a measured curve of one stitch expect 30 to 50 % on what the stitches add'
      : `from yarn data alone expect a factor of 2 to 3 on what the stitches add; ${againstPrint}`;
  return `The ranges hold the scatter of the parameters, not the error of the model: ${error} (judgement).${calibrated}`;
}

/** Strain of the arms, the balance of energies, and how far to trust it. */
export function checkBlocks(one: CouponResult, id: string, units: UnitSystem): Block[] {
  const items = [...strainFacts(one, units), ...balance(one, units)];
  return [
    heading(3, 'Checks', `${id}-checks`),
    ...(items.length === 0 ? [] : [{ kind: 'facts' as const, items }]),
    { kind: 'paragraph', text: trust(one) },
  ];
}
