/** Computes all quantities of candidates. */
export interface Evaluator {
  /** `kernel`: laminates alone, in flat arrays; `design`: each candidate as a whole design. */
  readonly path: 'kernel' | 'design';
  /**
   * All quantities of several candidates.
   * @param genomes flat
   * @param count how many
   * @param values written: a row of all quantities for each, SI
   * @param computed written: 1 for each that could be computed, else 0
   * @returns why the first that could not be computed could not, where that is known
   */
  readonly evaluate: (
    genomes: Int32Array,
    count: number,
    values: Float64Array,
    computed: Uint8Array,
  ) => string | undefined;
}

/** Where the numbers of a genome stand: varied inputs, then the length of the stack where there are several, then its plies. */
export interface GenomeLayout {
  readonly genes: number;
  /** Varied inputs. */
  readonly inputs: number;
  /** Place of the gene of the length; -1 without one. */
  readonly length: number;
  /** Place of the first ply. */
  readonly plies: number;
}
