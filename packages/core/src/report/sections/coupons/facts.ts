import type { CouponResult } from '../../../design/index.js';
import type { CouponSpecimen } from '../../../fracture/index.js';
import { formatNumber, type UnitSystem } from '../../../quantity/index.js';
import type { Block, Cell } from '../../blocks.js';
import { amount } from '../build.js';
import { armWords, digits, limitNames, listed, originWords, rangeWords, specimenWords } from './words.js';

type Fact = { readonly label: string; readonly value: Cell; readonly remark?: string };
type SizedFact = readonly [label: string, value: number | undefined, remark?: string];

const lengths = (rows: readonly SizedFact[]): Fact[] =>
  rows.flatMap(([label, value, remark]) =>
    value === undefined ? [] : [{ label, value: amount(value, 'length'), ...(remark === undefined ? {} : { remark }) }],
  );

function sizes(specimen: CouponSpecimen): Fact[] {
  const { kind, width, arms, crackLength } = specimen;
  const from = `from ${originWords[kind]}`;
  const [upper, lower] = arms;
  const thickness: SizedFact[] =
    upper.thickness === lower.thickness
      ? [['Thickness of each arm', upper.thickness]]
      : [
          ['Thickness of the upper arm', upper.thickness],
          ['Thickness of the lower arm', lower.thickness],
        ];
  return [
    ...lengths([...thickness, ['Width', width], ['Starting crack', crackLength, from]]),
    ...(kind === 'dcb' || kind === 'peel' ? lengths([['End of the bond', specimen.length, from]]) : []),
    ...(kind === 'enf'
      ? [
          ...lengths([
            ['Span', specimen.span],
            ['Distance of the two loads', specimen.loadSpan],
            ['Beyond the right support', specimen.overhang],
          ]),
          ...(specimen.friction === undefined
            ? []
            : [{ label: 'Friction of the crack faces', value: amount(specimen.friction, 'number') }]),
        ]
      : []),
    ...(kind === 'wedge'
      ? lengths([
          ['Opening of the mouth', specimen.opening],
          ['Depth of the bond', specimen.depth, from],
        ])
      : []),
  ];
}

function bond({ model: { coupon } }: CouponResult, units: UnitSystem): Fact {
  const range = coupon.bondToughnessRange;
  const value = coupon.specimen.bondToughness;
  return {
    label: 'Toughness of the bond alone',
    value: amount(value, 'toughness'),
    remark:
      range === undefined
        ? 'its range is the general one'
        : `range ${rangeWords({ median: value, ...range }, 'toughness', units)}`,
  };
}

function stitches({ model, prediction }: CouponResult): Fact[] {
  const { rows, law, penetrationDensity } = prediction;
  const { stitching } = model.coupon;
  if (stitching === undefined) return [{ label: 'Stitch plan', value: 'none' }];
  const failures = [...new Set(rows.map(({ failure }) => failure))];
  return [
    {
      label: 'Stitch plan',
      value: model.stitching ?? 'as given',
      remark: `the crack grows ${stitching.growth} the rows of the pattern`,
    },
    ...(penetrationDensity === undefined
      ? []
      : [{ label: 'Penetrations', value: amount(penetrationDensity, 'perArea'), remark: 'of the pattern' }]),
    { label: 'Rows that the crack meets', value: String(rows.length) },
    ...(failures.length === 0
      ? []
      : [
          {
            label: 'Weakest in one stitch',
            value: listed(failures.map((failure) => limitNames[failure])),
          },
        ]),
    ...(law === undefined
      ? []
      : [
          { label: 'Peak force of one stitch', value: amount(law.peak.force, 'force', digits) },
          {
            label: `${model.coupon.specimen.kind === 'enf' ? 'Sliding' : 'Opening'} at that force`,
            value: amount(law.peak.opening, 'length', digits),
          },
        ]),
  ];
}

/** Above this ratio rows break one at a time and the loads jump (docs/theory/stitch-toughness.md). */
const coarse = 0.5;

function found({ model, prediction }: CouponResult, units: UnitSystem): Fact[] {
  const { zone, discreteness, toughness, onset } = prediction;
  const stitched = model.coupon.stitching;
  return [
    ...(onset === undefined
      ? []
      : [
          { label: 'The bond first gives way at', value: amount(onset.load, 'force', digits) },
          { label: 'Displacement there', value: amount(onset.displacement, 'length', digits) },
        ]),
    ...(zone === undefined
      ? []
      : [
          {
            label: 'Bridged zone, as computed',
            value: amount(zone.computed, 'length', digits),
            remark: `by the rule of bridging lengths ${rangeWords({ median: zone.computed, low: zone.low, high: zone.high }, 'length', units)}`,
          },
          {
            label: 'Growth needed for a steady value',
            value: amount(zone.needed, 'length', digits),
            remark: stitched === undefined ? 'at the most' : 'at the most; the stitched length follows',
          },
        ]),
    ...(zone === undefined || stitched === undefined
      ? []
      : [{ label: 'Stitched length', value: amount(stitched.to - stitched.from, 'length', digits) }]),
    ...(discreteness === undefined
      ? []
      : [
          {
            label: 'Distance of rows over bridging length',
            value: formatNumber(discreteness, digits),
            remark:
              discreteness > coarse
                ? 'rows break one at a time: loads jump, and a test reads more than the steady value'
                : 'rows act nearly as a spread of stitches',
          },
        ]),
    ...(toughness?.ceiling === undefined
      ? []
      : [
          {
            label: 'Arms reach their breaking strain at the crack tip at',
            value: amount(toughness.ceiling, 'toughness'),
            remark:
              'E h eps²/3 of a homogeneous arm; a reading may pass it somewhat, since the sharpest bend lies at a row behind the tip',
          },
        ]),
  ];
}

function tested({ model: { test }, prediction }: CouponResult): Fact[] {
  if (test === undefined) return [];
  const off = prediction.peakForce.nominal / test.peakForce;
  return [
    {
      label: 'Peak force as tested',
      value: amount(test.peakForce, 'force'),
      remark: `the middle values of the parameters give ${formatNumber(off, digits)} times that`,
    },
  ];
}

/** What the coupon is, and what was found of it besides what it bears. */
export function couponFacts(one: CouponResult, units: UnitSystem): Block {
  const { specimen } = one.model.coupon;
  return {
    kind: 'facts',
    items: [
      { label: 'Test', value: specimenWords[specimen.kind] },
      { label: 'Arms', value: armWords(one.model.arms) },
      ...sizes(specimen),
      bond(one, units),
      ...stitches(one),
      ...found(one, units),
      ...tested(one),
    ],
  };
}
