/**
 * Writes src/quantity/prepared-units.json: unit expressions that designs use, reduced to SI by mathjs.
 * Run: node --conditions=@selvage/source --import=tsx packages/core/scripts/prepare-units.ts
 * test/core/quantity/unit.test.ts compares every entry with mathjs.
 */
import { writeFileSync } from 'node:fs';
import { kinds } from '../src/quantity/kind.js';
import { readUnitWithMathjs } from '../src/quantity/mathjs-units.js';
import { normaliseUnit } from '../src/quantity/unit.js';

const further = [
  'Pa', 'kPa', 'bar', 'N', 'mN', 'cN', 'lb', 'ft', 'yd', 'nm', 'g', 'mg', 'cm', 'm', 'km', 'h', 's', 'min',
  'N/mm^2', 'lbf/in^2', 'lbf/ft', 'N/cm', 'N*m', 'N*mm', 'g/cm^2', 'kg/m', 'g/m', 'mg/m', 'ktex', 'lb/yd^2', 'lb/ft^2',
  'N/dtex', 'cN/denier', 'mm^2', '1/m', '1/degC', '1/degF', 'mm/m', 'm/min', 'mm/mm', 'rad', 'K', 'degC', 'degF', 'ft*lbf', 'J', 'kJ',
]; // biome-ignore format: a list reads better in lines

const names = new Set(further.map(normaliseUnit));
for (const kind of Object.values(kinds)) {
  for (const unit of [kind.si, kind.metric, kind.us, ...kind.alsoAccepted]) names.add(normaliseUnit(unit));
}

const table: Record<string, [number, string, number?]> = {};
for (const name of [...names].sort()) {
  if (name === '' || name === '%' || name === '1e-6') continue;
  const unit = readUnitWithMathjs(name);
  if (unit === undefined) throw new Error(`mathjs does not know ${name}`);
  table[name] = unit.offset === 0 ? [unit.factor, unit.dimension] : [unit.factor, unit.dimension, unit.offset];
}
const lines = Object.entries(table).map(
  ([name, entry]) => `  ${JSON.stringify(name)}: [${entry.map((part) => JSON.stringify(part)).join(', ')}]`,
);
writeFileSync(new URL('../src/quantity/prepared-units.json', import.meta.url), `{\n${lines.join(',\n')}\n}\n`);
