import type { UnitSystem } from '../../quantity/index.js';

export interface Point {
  /** m */
  readonly x: number;
  readonly y: number;
}

export interface StitchFigureInput {
  /** Unique in the report; lower case with hyphens. */
  readonly id: string;
  readonly title: string;
  /**
   * Where the needle passes, m from the lower left corner of the field. Holes of one row share its number; holes of a second
   * set of rows that crosses the first have another `set` (default 0) and are drawn without row names and dimensions.
   */
  readonly penetrations: readonly (Point & { readonly row: number; readonly set?: number })[];
  /** Thread lying on a face, from hole to hole. */
  readonly threads: readonly { readonly from: Point; readonly to: Point; readonly face: 'top' | 'bottom' }[];
  /** m, both positive. */
  readonly field: { readonly width: number; readonly height: number };
  /** Given when the lower side of the field is the edge of the part. */
  readonly edge?: 'bottom';
  /** Distance of holes along a row, m. */
  readonly pitch: number;
  /** Distance of rows, m; absent for a single row. */
  readonly rowSpacing?: number;
  /** m */
  readonly needleDiameter: number;
  readonly units: UnitSystem;
}
