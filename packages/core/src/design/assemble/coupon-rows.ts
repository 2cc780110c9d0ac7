import { type CouponStitching, rowsAcross } from '../../fracture/index.js';
import { fail, type Path } from '../../problem/index.js';
import type { Note } from '../../provenance/index.js';
import type { EdgeRow, Pattern } from '../../stitch/index.js';
import type { StitchingModel } from '../model.js';
import type { CouponEntry } from '../schema/design.js';
import { placed } from './context.js';
import { bondEnd, type Show } from './coupon-specimen.js';

/** A coupon of the design, its path, and the plan of its stitches. */
export interface CouponRows {
  readonly entry: CouponEntry;
  readonly path: Path;
  readonly plan: StitchingModel;
  readonly show: Show;
}

/** From where places count. */
const origins: Readonly<Record<CouponEntry['type'], string>> = {
  dcb: 'the loads',
  enf: 'the support',
  peel: 'the grips',
  wedge: 'the edge',
};

type Stretch = Pick<CouponStitching, 'pattern' | 'growth' | 'from' | 'to' | 'origin'> & {
  readonly notes: readonly Note[];
};

/**
 * Where the rows lie in a coupon that has the keys of its type, its crack inside.
 * @throws out-of-range, contradiction at the keys of the coupon
 */
export function rowsInCoupon(coupon: CouponRows): Stretch {
  const { entry, path, show } = coupon;
  const { name, plan } = coupon.plan;
  const { pattern } = plan;
  const { type, growth = 'across', stitchedLength } = entry;
  const end = bondEnd(entry);
  const start = type === 'wedge' ? 0 : (entry.crackLength ?? 0);
  const byOffset = pattern.kind === 'rows' && growth === 'across';
  demandSense(entry, path, pattern);
  const { firstRow, notes } = byOffset ? offsetRows(coupon, pattern.rows) : firstRowOf(entry, pattern, show);
  const from = start + firstRow;
  if (!byOffset && (from >= end || from <= 0)) {
    fail({
      code: 'out-of-range',
      message: `the first row lies ${show(from)} from ${origins[type]}, the bond ends at ${show(end)}`,
      allowed: `firstRow ${type === 'wedge' ? 'above 0, ' : ''}below ${show(end - start)}`,
      path: entry.firstRow === undefined ? [...path, 'stitching'] : [...path, 'firstRow'],
    });
  }
  if (stitchedLength !== undefined && from + stitchedLength > end * (1 + 1e-9)) {
    fail({
      code: 'out-of-range',
      message: `the stitched stretch goes to ${show(from + stitchedLength)}, the bond ends at ${show(end)}`,
      allowed: `stitchedLength at most ${show(end - from)}`,
      path: [...path, 'stitchedLength'],
    });
  }
  const to = Math.min(stitchedLength === undefined ? end : from + stitchedLength, end);
  // The first of the two sub-rows of a zigzag lies half its width before the centre line.
  const lead = pattern.kind === 'zigzag' && growth === 'across' ? pattern.swing / 2 : 0;
  const places = { pattern, growth, from, to, origin: byOffset ? 0 : from + lead };
  const rows = placed([...path, 'stitching'], () =>
    rowsAcross({ ...places, width: entry.width, curve: { opening: [], force: [] }, failure: 'threadAtCrack' }),
  );
  if (rows.length === 0) {
    fail({
      code: 'out-of-range',
      message: `no stitch of \`stitching.${name}\` lies in the coupon between ${show(from)} and ${show(to)}`,
      allowed: 'a plan with a row in this stretch, or an unstitched coupon',
      path: [...path, 'stitching'],
    });
  }
  return { ...places, notes };
}

/** Rows along an edge are where their offsets say, and a split from the edge crosses them. */
function demandSense({ type, growth, firstRow }: CouponEntry, path: Path, pattern: Pattern): void {
  if (pattern.kind !== 'rows') return;
  const refuse = (key: string, message: string, allowed: string): never =>
    fail({ code: 'contradiction', message, allowed, path: [...path, key], atKey: true });
  if (type === 'wedge' && growth === 'along')
    refuse('growth', 'a split from the edge crosses rows that follow the edge', '`growth: across`, or none');
  if (growth !== 'along' && firstRow !== undefined)
    refuse('firstRow', '`firstRow` is given beside the offsets of the rows', 'the offsets of the stitch plan alone');
}

interface FirstRow {
  /** From the start of the crack, of a wedge from the edge, m. */
  readonly firstRow: number;
  readonly notes: readonly Note[];
}

function firstRowOf(entry: CouponEntry, pattern: Pattern, show: Show): FirstRow {
  if (entry.firstRow !== undefined) return { firstRow: entry.firstRow, notes: [] };
  const distance =
    pattern.kind === 'rows'
      ? (pattern.rows[0]?.pitch ?? 0)
      : entry.growth === 'along'
        ? pattern.pitch
        : pattern.rowSpacing;
  const text = `the first row is taken to lie one distance of rows, ${show(distance)}, from ${entry.type === 'wedge' ? 'the edge' : 'the end of the crack'}: no \`firstRow\` is given`;
  return { firstRow: distance, notes: [{ level: 'assumption', text }] };
}

/** Rows by their offset from the edge: those in the starting crack are cut. */
function offsetRows({ entry, path, plan: { name }, show }: CouponRows, rows: readonly EdgeRow[]): FirstRow {
  const offsets = rows.map(({ offset }) => offset);
  const end = bondEnd(entry);
  const outside = offsets.findIndex((offset) => offset >= end);
  if (outside >= 0) {
    fail({
      code: 'out-of-range',
      message: `row ${outside + 1} of \`stitching.${name}\` lies ${show(offsets[outside] ?? 0)} from ${origins[entry.type]}, the bond ends at ${show(end)}`,
      allowed: `rows below ${show(end)}`,
      path: [...path, 'stitching'],
      also: [{ label: `row ${outside + 1}`, path: ['stitching', name, 'rows', outside, 'offset'] }],
    });
  }
  const start = entry.crackLength ?? 0;
  const cut = entry.type === 'wedge' ? 0 : offsets.filter((offset) => offset < start).length;
  const text = `${cut === 1 ? 'one row lies' : `${cut} rows lie`} in the crack at the start, at less than ${show(start)} from ${origins[entry.type]}: taken as cut`;
  return { firstRow: 0, notes: cut === 0 ? [] : [{ level: 'assumption', text }] };
}
