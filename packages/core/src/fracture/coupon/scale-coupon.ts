import type { Pattern, Thread } from '../../stitch/index.js';
import { rowsAcross } from '../specimen/rows-across.js';
import type { Arm } from '../types.js';
import type { Coupon, CouponChange, CouponStitching } from './types.js';

/** A pattern with its pitches and its distances of rows times factors; a zigzag keeps its swing, an edge its first row. */
export function scalePattern(pattern: Pattern, pitch: number, spacing: number): Pattern {
  switch (pattern.kind) {
    case 'parallel':
    case 'staggered':
    case 'zigzag':
      return { ...pattern, pitch: pattern.pitch * pitch, rowSpacing: pattern.rowSpacing * spacing };
    case 'crossing': {
      const { second, offset } = pattern;
      return {
        ...pattern,
        pitch: pattern.pitch * pitch,
        rowSpacing: pattern.rowSpacing * spacing,
        second: { pitch: second.pitch * pitch, rowSpacing: second.rowSpacing * spacing },
        ...(offset && { offset: { x: offset.x * pitch, y: offset.y * spacing } }),
      };
    }
    case 'rows': {
      const first = pattern.rows[0]?.offset ?? 0;
      return {
        ...pattern,
        rows: pattern.rows.map((row) => ({
          ...row,
          offset: first + (row.offset - first) * spacing,
          pitch: row.pitch * pitch,
          ...(row.stagger !== undefined && { stagger: row.stagger * pitch }),
        })),
        ...(pattern.bandWidth !== undefined && { bandWidth: pattern.bandWidth * spacing }),
      };
    }
  }
}

function stitched(coupon: Coupon, change: (stitching: CouponStitching) => CouponStitching): Coupon {
  return coupon.stitching === undefined ? coupon : { ...coupon, stitching: change(coupon.stitching) };
}

/** Keeps a row in its stretch, m. */
const rounding = 1e-9;

/** A coupon with another distance of its holes; the row that the crack meets first stays where it is. */
function withPattern(coupon: Coupon, pitch: number, spacing: number): Coupon {
  return stitched(coupon, (stitching) => {
    const { penetration, origin } = stitching;
    const scaled: CouponStitching = {
      ...stitching,
      pattern: scalePattern(stitching.pattern, pitch, spacing),
      penetration: { ...penetration, ...(penetration.pitch !== undefined && { pitch: penetration.pitch * pitch }) },
    };
    const [before, after] = [firstRow(coupon, stitching), firstRow(coupon, scaled)];
    if (before === undefined || after === undefined || before === after) return scaled;
    return { ...scaled, origin: origin + before - after, from: before - rounding };
  });
}

/** Where the crack meets the first row, m. */
function firstRow(
  { specimen: { width } }: Coupon,
  { pattern, growth, from, to, origin }: CouponStitching,
): number | undefined {
  const curve = { opening: [], force: [] };
  return rowsAcross({ pattern, growth, width, from, to, origin, curve, failure: 'threadAtCrack' })[0]?.position;
}

/** The same stitch with another number of penetrations per area: pitch and distance of rows scaled alike. */
export function withDensity(coupon: Coupon, factor: number): Coupon {
  return withPattern(coupon, factor ** -0.5, factor ** -0.5);
}

const thicker = (arm: Arm, factor: number): Arm => ({
  ...arm,
  thickness: arm.thickness * factor,
  bendingStiffness: arm.bendingStiffness * factor ** 3,
  axialStiffness: arm.axialStiffness * factor,
  shearStiffness: arm.shearStiffness * factor,
});

/** A coupon with one thing changed by a factor. */
export function changedCoupon(
  coupon: Coupon,
  name: CouponChange['name'],
  factor: number,
  anchorEfficiency = 1,
): Coupon {
  const { specimen } = coupon;
  switch (name) {
    case 'pitch':
      return withPattern(coupon, factor, 1);
    case 'rowSpacing':
      return withPattern(coupon, 1, factor);
    case 'threadLinearDensity':
      return stitched(coupon, ({ penetration, ...rest }) => {
        const heavier = (thread: Thread): Thread => ({ ...thread, linearDensity: thread.linearDensity * factor });
        const { needleThread, underThread } = penetration;
        const threads = {
          needleThread: heavier(needleThread),
          ...(underThread && { underThread: heavier(underThread) }),
        };
        return { ...rest, penetration: { ...penetration, ...threads } };
      });
    case 'anchorEfficiency':
      return stitched(coupon, ({ penetration, ...rest }) => {
        const parameters = { ...penetration.parameters, anchorEfficiency: anchorEfficiency * factor };
        return { ...rest, penetration: { ...penetration, parameters } };
      });
    case 'armThickness': {
      const [upper, lower] = specimen.arms;
      const arms = [thicker(upper, factor), thicker(lower, factor)] as const;
      return stitched({ ...coupon, specimen: { ...specimen, arms } }, ({ penetration, ...rest }) => ({
        ...rest,
        penetration: {
          ...penetration,
          thickness: penetration.thickness * factor,
          ...(penetration.crackDepth !== undefined && { crackDepth: penetration.crackDepth * factor }),
        },
      }));
    }
    case 'bondToughness':
      return { ...coupon, specimen: { ...specimen, bondToughness: specimen.bondToughness * factor } };
  }
}
