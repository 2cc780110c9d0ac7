import { displayNumber, displayUnit, type KindName, type UnitSystem } from '../../quantity/index.js';

interface PolarTable {
  readonly angles: readonly number[];
  readonly curves: readonly { readonly label: string; readonly values: readonly number[]; readonly kind: KindName }[];
  readonly units: UnitSystem;
}

/** The index of the angle nearest to a multiple of 15 degrees; whole half turns away count as the same direction. */
function nearestAngle(angles: readonly number[], wanted: number): number {
  const distance = (angle: number): number => {
    const apart = (((angle - wanted) % 180) + 180) % 180;
    return Math.min(apart, 180 - apart);
  };
  return angles.reduce((best, angle, i) => (distance(angle) < distance(angles[best] ?? 0) - 1e-9 ? i : best), 0);
}

/** Whether every curve takes the same value at an angle and at its negative, to a millionth. */
function mirrored({ angles, curves }: PolarTable): boolean {
  return [15, 30, 45, 60, 75].every((angle) =>
    curves.every(({ values }) => {
      const plus = values[nearestAngle(angles, angle)] ?? 0;
      const minus = values[nearestAngle(angles, -angle)] ?? 0;
      return Math.abs(plus - minus) <= 1e-6 * Math.max(Math.abs(plus), Math.abs(minus));
    }),
  );
}

/** The curves as a table from 0 to 90 degrees in steps of 15; on to 165 when the laminate is not the same on both sides of x. */
export function polarText(table: PolarTable): string {
  const { angles, curves, units } = table;
  const last = mirrored(table) ? 90 : 165;
  const picked = Array.from({ length: last / 15 + 1 }, (_, i) => nearestAngle(angles, i * 15));
  const columns = [
    [
      'angle',
      '°',
      ...picked.map((index) => String(Math.round(((((angles[index] ?? 0) % 180) + 180) % 180) * 100) / 100)),
    ],
    ...curves.map(({ label, values, kind }) => [
      label,
      displayUnit(kind, units),
      ...picked.map((index) => displayNumber(values[index] ?? 0, kind, { units, digits: 3 })),
    ]),
  ];
  const widths = columns.map((column) => Math.max(...column.map((cell) => [...cell].length)));
  const rows = Array.from({ length: picked.length + 2 }, (_, row) =>
    columns
      .map((column, i) => ' '.repeat((widths[i] ?? 0) - [...(column[row] ?? '')].length) + (column[row] ?? ''))
      .join('   ')
      .trimEnd(),
  );
  return rows.join('\n');
}
