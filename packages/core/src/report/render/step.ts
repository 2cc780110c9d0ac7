import { displayUnit, formatNumber, inDisplayUnit, type UnitSystem } from '../../quantity/index.js';
import type { ResultMatrix, StepBlock } from '../blocks.js';
import { type Chain, chainOf } from '../formula/index.js';

/** A matrix as printed: its entries as numbers in one unit. */
export interface PrintedMatrix {
  readonly name: string;
  readonly unit: string;
  readonly rows: readonly (readonly string[])[];
}

/** What the renderers print of a step, in the reader's units. */
export interface PrintedStep {
  readonly chains: readonly Chain[];
  readonly matrices: readonly PrintedMatrix[];
}

export function printedStep({ equations, matrices, digits }: StepBlock, units: UnitSystem): PrintedStep {
  return {
    chains: equations.map((equation) => chainOf(equation, units, digits)),
    matrices: matrices.map((matrix) => printedMatrix(matrix, units, digits)),
  };
}

function printedMatrix({ name, kind, rows }: ResultMatrix, units: UnitSystem, digits: number): PrintedMatrix {
  return {
    name,
    unit: displayUnit(kind, units),
    rows: rows.map((row) => row.map((value) => formatNumber(inDisplayUnit(value, kind, units), digits))),
  };
}

/** What stands behind the source of a step: the published examples that print a result of its formula. */
export const reproduced = ({ examples }: StepBlock): string =>
  examples.length === 0 ? '' : `; reproduces ${listed(examples)}`;

/** The line under a step that says where its formula is from. */
export const origin = (step: StepBlock): string => step.sourceText + reproduced(step);

const mostExamples = 3;

function listed(ids: readonly string[]): string {
  const shown = ids.slice(0, mostExamples).join(', ');
  return ids.length > mostExamples ? `${shown} and ${ids.length - mostExamples} more published examples` : shown;
}
