import { type InPlaneRow, inPlaneRows } from './compare-in-plane.js';
import { type FormRow, formRows, type ZoneRow, zoneRows } from './compare-lengths.js';
import { type Predictions, type ToughnessRow, toughnessRows } from './compare-toughness.js';
import type { Bends } from './coupons.js';
import { cases, entry } from './inputs.js';
import { type ArmsFound, armsOf, predict } from './predict.js';
import { type Statement, statements } from './statements.js';

type ByLaw<T> = Readonly<Record<Bends, T>>;

/** Everything that is compared, by both laws. */
export interface StitchValidation {
  readonly predictions: Predictions;
  readonly toughness: ByLaw<readonly ToughnessRow[]>;
  readonly zones: ByLaw<readonly ZoneRow[]>;
  readonly forms: ByLaw<readonly FormRow[]>;
  readonly inPlane: readonly InPlaneRow[];
  /** Of the same laminate with plain arms, densely and sparsely stitched. */
  readonly arms: ByLaw<Readonly<Record<'dense' | 'sparse', ArmsFound>>>;
  readonly statements: readonly Statement[];
}

const byLaw = <T>(of: (bends: Bends) => T): ByLaw<T> => ({ rigid: of('rigid'), yielding: of('yielding') });

let found: StitchValidation | undefined;

/** All comparisons; computed once, since they take some seconds. */
export function stitchValidation(): StitchValidation {
  found ??= compute();
  return found;
}

function compute(): StitchValidation {
  const predictions: Predictions = Object.fromEntries(
    Object.entries(cases).map(([id, one]) => [id, byLaw((bends) => predict(one, bends))]),
  );
  const arms = byLaw((bends) => ({
    dense: armsOf(entry(cases, 'uniweave-64'), bends),
    sparse: armsOf(entry(cases, 'uniweave-16'), bends),
  }));
  return {
    predictions,
    toughness: byLaw((bends) => toughnessRows(predictions, bends)),
    zones: byLaw((bends) => zoneRows(predictions, bends)),
    forms: byLaw((bends) => formRows(bends)),
    inPlane: inPlaneRows(),
    arms,
    statements: statements(predictions, arms),
  };
}
