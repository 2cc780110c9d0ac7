/** Every letter of a drawing is of this size, px; weight and colour tell its rank. */
export const lettering = 13;

/** Nothing smaller is shown on a telephone, px: narrower than that allows a drawing scrolls in its own box. */
export const leastLettering = 9.1;

/** No drawing is shown wider than this, px. */
export const widest = 720;

/** Widths of strokes, px. */
export const strokes = {
  hair: 1,
  line: 1.2,
  sign: 1.6,
  series: 2.2,
  edge: 3,
  /** Cleared on both sides of a line that crosses a hatched ply. */
  gap: 3.6,
  /** Cleared around letters that stand on lines. */
  halo: 4,
} as const;

/** How far a dye shows in an area that other lines cross. */
export const tint = 0.16;

/** Distance of the lines of a hatch, px. */
export const hatchSpacing = 5;
