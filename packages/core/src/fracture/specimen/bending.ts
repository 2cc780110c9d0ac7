/** A load on a beam on two supports, as a share of the whole. */
export interface LoadPoint {
  /** m, from the left support. */
  readonly place: number;
  readonly share: number;
}

/** A beam on supports at 0 and span. */
export interface Bending {
  readonly span: number;
  readonly loads: readonly LoadPoint[];
}

/** Force of the left support per load. */
export function leftSupport({ span, loads }: Bending): number {
  return loads.reduce((sum, { place, share }) => sum + (share * (span - place)) / span, 0);
}

/** Moment per load at a place, m, positive under loads between the supports; 0 beyond the right one. */
export function momentAt(bending: Bending, place: number): number {
  const { span, loads } = bending;
  if (place >= span || place <= 0) return 0;
  return loads.reduce((sum, load) => sum - load.share * Math.max(0, place - load.place), leftSupport(bending) * place);
}
