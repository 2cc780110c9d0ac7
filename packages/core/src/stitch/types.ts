/** Sewing thread as sewn: one strand. SI units. */
export interface Thread {
  readonly name: string;
  /** Mass per length of one strand, kg/m (1 tex = 1e-6 kg/m). */
  readonly linearDensity: number;
  /** Density of the fibre, kg/m^3. */
  readonly density: number;
  /** Breaking force per linear density, N/(kg/m). */
  readonly tenacity?: number;
  /** Axial stiffness per linear density, N/(kg/m). */
  readonly modulus?: number;
  /** Fibre share of the strand's cross-section inside its round outline; 0.65 when not given. */
  readonly packing?: number;
}

/** Rows of holes along x, `rowSpacing` apart in y, the holes of all rows level with each other. Lengths in m. */
export interface ParallelPattern {
  readonly kind: 'parallel';
  /** Distance between holes along a row, m, above 0. */
  readonly pitch: number;
  /** Distance between rows, m, above 0. */
  readonly rowSpacing: number;
}

/** Parallel rows, every second row shifted along x. */
export interface StaggeredPattern {
  readonly kind: 'staggered';
  readonly pitch: number;
  readonly rowSpacing: number;
  /** Shift of every second row as a fraction of the pitch, 0 to below 1; one half when not given. */
  readonly shift?: number;
}

/** Zigzag rows along x: holes alternate between the two sides of a centre line; all centre lines in phase. */
export interface ZigzagPattern {
  readonly kind: 'zigzag';
  /** Advance along x per hole, m, above 0. */
  readonly pitch: number;
  /** Distance between the two sub-rows of a centre line, m, above 0. */
  readonly swing: number;
  /** Distance between centre lines, m, above 0. */
  readonly rowSpacing: number;
}

/** Two sets of parallel rows sewn over each other. The first set runs along x with a hole at the origin. */
export interface CrossingPattern {
  readonly kind: 'crossing';
  readonly pitch: number;
  readonly rowSpacing: number;
  readonly second: { readonly pitch: number; readonly rowSpacing: number };
  /** Direction of the second set's rows from x, degrees, above 0 and below 180; 90 when not given. */
  readonly angle?: number;
  /** Place of one hole of the second set, m; the origin when not given. */
  readonly offset?: { readonly x: number; readonly y: number };
}

/** One row that follows an edge. */
export interface EdgeRow {
  /** Distance of the row from the edge, m, above 0. */
  readonly offset: number;
  /** Length of the row along its own path, m, at least one pitch. */
  readonly length: number;
  /** Wanted pitch, m, above 0; adjusted so that a whole number of stitches closes the row. */
  readonly pitch: number;
  /** Distance of the first hole from the start of the row, m, 0 to below one pitch; 0 when not given. */
  readonly stagger?: number;
}

/** Rows that follow an edge, nearest to the edge first. */
export interface RowsPattern {
  readonly kind: 'rows';
  readonly rows: readonly EdgeRow[];
  /** Width over which the rows are counted when a number per area is asked for, m; rows times their mean distance when not given. */
  readonly bandWidth?: number;
}

/** A pattern that fills a plane. */
export type FieldPattern = ParallelPattern | StaggeredPattern | ZigzagPattern | CrossingPattern;

/** Where the needle passes: a pattern that fills a field, or rows along an edge. */
export type Pattern = FieldPattern | RowsPattern;

/** A rectangle with its lower left corner at (x, y), at the origin when not given; m. Lower and left sides belong to it, the others not. */
export interface Field {
  readonly length: number;
  readonly width: number;
  readonly x?: number;
  readonly y?: number;
}

/** One pass of the needle. */
export interface Penetration {
  /** m; in a pattern of edge rows along the row's own length. */
  readonly x: number;
  /** m; in a pattern of edge rows the distance from the edge. */
  readonly y: number;
  /** Number of the row within its set, counting from 0 at the origin or the first edge row; negative below it. */
  readonly row: number;
  /** 0, or 1 for the second set of a crossing pattern. */
  readonly set: 0 | 1;
}
