import type { Rule, SymbolMeaning } from './rule.js';
import { bridgingRules, bridgingSymbols } from './rules/bridging.js';
import { constituentRules, constituentSymbols } from './rules/constituents.js';
import { couponRules, couponSymbols } from './rules/coupon.js';
import { inPlaneRules, inPlaneSymbols } from './rules/in-plane.js';
import { laminateRules, laminateSymbols } from './rules/laminate.js';
import { loadRules, loadSymbols } from './rules/load.js';
import { plyRules, plySymbols } from './rules/ply.js';
import { stitchRules, stitchSymbols } from './rules/stitch.js';
import { strengthRules, strengthSymbols } from './rules/strength.js';
import { toughnessRules, toughnessSymbols } from './rules/toughness.js';

const ruleTable = {
  ...constituentRules,
  ...plyRules,
  ...laminateRules,
  ...loadRules,
  ...strengthRules,
  ...bridgingRules,
  ...toughnessRules,
  ...inPlaneRules,
  ...couponRules,
  ...stitchRules,
};

/** The name of a formula of which a computation can show the working: a key of `workingRules`. */
export type RuleName = keyof typeof ruleTable;

/** Every formula of which a computation can show the working. */
export const rules: Readonly<Record<RuleName, Rule>> = ruleTable;

/** Every symbol of the formulas; one means the same in all of them. */
export const symbols: Readonly<Record<string, SymbolMeaning>> = {
  ...constituentSymbols,
  ...plySymbols,
  ...laminateSymbols,
  ...loadSymbols,
  ...strengthSymbols,
  ...bridgingSymbols,
  ...toughnessSymbols,
  ...inPlaneSymbols,
  ...couponSymbols,
  ...stitchSymbols,
};
