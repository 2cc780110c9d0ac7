import { type Note, type SourceKey, uniqueSources } from '../provenance/index.js';
import { shown } from './check.js';
import {
  type ComparedProperty,
  type ComparedRule,
  comparedSources,
  type PropertyModels,
  propertyModels,
} from './micromechanics-models.js';
import { inverseRule, ruleOfMixtures } from './mixing-rules.js';
import { unidirectionalPly } from './ply-from-constituents.js';
import { stiffnessResin } from './porous-matrix.js';
import type { Fibre, MicromechanicsModel, Resin, VoidModel } from './types.js';

/** What is compared: fibre, resin and how much of each; SI units. */
export interface ComparisonInput {
  readonly name?: string;
  readonly fibre: Fibre;
  readonly resin: Resin;
  readonly fibreVolumeFraction: number;
  readonly voidFraction?: number;
  readonly voidModel?: VoidModel;
  /** Decides which value counts as used, and the xi of Halpin-Tsai. */
  readonly model?: MicromechanicsModel;
}

/** What one model gives for one property, in SI. */
export interface ModelValue {
  readonly rule: ComparedRule;
  readonly value: number;
  /** Measure of reinforcement, Halpin-Tsai only. */
  readonly xi?: number;
  /** `used`: the ply of `plyFromConstituents` has it; `bound`: no estimate of this property, only its upper bound. */
  readonly role: 'used' | 'alternative' | 'bound';
  /** Whether it lies between the phases in series and in parallel; absent where the property has no such bounds. */
  readonly withinBounds?: boolean;
  readonly source: SourceKey;
}

/** One property by all models that give it. */
export interface PropertyComparison {
  readonly property: ComparedProperty;
  readonly unit: 'Pa' | '' | '1/K';
  readonly values: readonly ModelValue[];
  /** Phases in series (Reuss) and in parallel (Voigt), the lower first whichever phase is stiffer. */
  readonly bounds?: { readonly reuss: number; readonly voigt: number };
  /** Highest less lowest estimate, bounds left out; and over the size of the value used (absent when that is 0). */
  readonly spread: number;
  readonly relativeSpread?: number;
}

/** A unidirectional ply by every model. */
export interface MicromechanicsComparison {
  readonly properties: readonly PropertyComparison[];
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

const units: Record<ComparedProperty, PropertyComparison['unit']> = {
  E1: 'Pa',
  E2: 'Pa',
  G12: 'Pa',
  nu12: '',
  nu23: '',
  G23: 'Pa',
  alpha1: '1/K',
  alpha2: '1/K',
};

/** The order of the columns. */
const rules = Object.keys(comparedSources) as ComparedRule[];

/** Rounding allowed when a value stands on a bound. */
const rounding = 1e-9;

function compared(property: ComparedProperty, models: PropertyModels, Vf: number): PropertyComparison | undefined {
  const { used, values, phases, xi } = models;
  const bounds = phases && { reuss: inverseRule(...phases, Vf), voigt: ruleOfMixtures(...phases, Vf) };
  const rows = rules.flatMap((rule): ModelValue[] => {
    const value = values[rule];
    if (value === undefined) return [];
    const alternative = rule === 'rule-of-mixtures' ? 'bound' : 'alternative';
    return [
      {
        rule,
        value,
        ...(rule === 'halpin-tsai' && xi !== undefined ? { xi } : {}),
        role: rule === used ? 'used' : alternative,
        ...(bounds && {
          withinBounds: value >= bounds.reuss * (1 - rounding) && value <= bounds.voigt * (1 + rounding),
        }),
        source: comparedSources[rule],
      },
    ];
  });
  const reference = rows.find(({ role }) => role === 'used')?.value;
  if (reference === undefined) return undefined;
  const estimates = rows.filter(({ role }) => role !== 'bound').map(({ value }) => value);
  const spread = Math.max(...estimates) - Math.min(...estimates);
  return {
    property,
    unit: units[property],
    values: rows,
    ...(bounds && { bounds }),
    spread,
    ...(reference === 0 ? {} : { relativeSpread: spread / Math.abs(reference) }),
  };
}

/** A warning for each value outside its bounds. */
function outside(name: string, { property, values, bounds }: PropertyComparison): Note[] {
  if (bounds === undefined) return [];
  const gigapascals = (value: number): string => `${shown(Number((value / 1e9).toPrecision(4)))} GPa`;
  return values
    .filter(({ withinBounds }) => withinBounds === false)
    .map(({ rule, value, source }) => {
      const [side, bound] =
        value > bounds.voigt
          ? ['above the phases in parallel (Voigt)', bounds.voigt]
          : ['below the phases in series (Reuss)', bounds.reuss];
      const text = `${name}: ${property} by ${rule}, ${gigapascals(value)}, lies ${side}, ${gigapascals(bound)}`;
      return { level: 'warning', text, source };
    });
}

/**
 * The constants of a unidirectional ply by each model side by side, with their spread and the bounds of the phases in
 * series and in parallel (Poisson's effects left out of the bounds): E1, E2, G12, nu12, and where they are known nu23, G23,
 * alpha1 and alpha2. The value marked `used` is that of `plyFromConstituents`.
 * @param input SI; fibreVolumeFraction 0.1 to 0.75; voidFraction 0 to 0.2 (0 when not given).
 * @returns Properties in a fixed order; a warning for each value outside its bounds.
 * @throws out-of-range, not-admissible, not-a-number as `plyFromConstituents`.
 * @source Jones 1999, ch. 3; Halpin & Kardos 1976; Chamis 1984; Hashin 1979; Schapery 1968 (recalled, not re-read).
 */
export function compareMicromechanics(input: ComparisonInput): MicromechanicsComparison {
  const { fibre, fibreVolumeFraction: Vf, model = {}, name = fibre.name } = input;
  // Constants do not depend on the mass per area.
  const ply = unidirectionalPly({ ...input, arealMass: 1 });
  const models = propertyModels({ fibre, resin: stiffnessResin(input.resin, input), Vf, ply, model });
  const properties = (Object.keys(units) as ComparedProperty[])
    .map((property) => compared(property, models[property], Vf))
    .filter((found) => found !== undefined);
  return {
    properties,
    notes: [...ply.notes, ...properties.flatMap((property) => outside(name, property))],
    sources: uniqueSources(
      ply.sources,
      properties.flatMap(({ values }) => values.map(({ source }) => source)),
    ),
  };
}
