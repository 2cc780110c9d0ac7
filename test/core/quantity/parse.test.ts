import { describe, expect, it } from 'vitest';
import { formatQuantity, type KindName, kinds, parseQuantity } from '../../../packages/core/src/quantity/index.js';

const si = (text: string | number, kind: KindName): number => {
  const parsed = parseQuantity(text, kind);
  if (!parsed.ok) throw new Error(parsed.problem.message);
  return parsed.value;
};
const problem = (text: string | number, kind: KindName) => {
  const parsed = parseQuantity(text, kind);
  if (parsed.ok) throw new Error(`${text} was read as ${parsed.value}`);
  return parsed.problem;
};
const close = (value: number, expected: number): void => expect(Math.abs(value / expected - 1)).toBeLessThan(1e-12);

// Definitions: 1 in = 25.4 mm, 1 lb = 0.45359237 kg (international yard and pound agreement, 1959),
// g = 9.80665 m/s^2 (3rd CGPM, 1901), tex = g/km and denier = g/9 km (ISO 1144).
const inch = 0.0254;
const pound = 0.45359237;
const poundForce = pound * 9.80665;

describe('quantities are read into SI', () => {
  const cases: [string, KindName, number][] = [
    ['0.25 mm', 'length', 0.25e-3],
    ['0.25mm', 'length', 0.25e-3],
    ['5/8 in', 'length', (5 / 8) * inch],
    ['1 1/4 in', 'length', 1.25 * inch],
    ['-1 1/2 in', 'length', -1.5 * inch],
    ['7 mil', 'length', 7e-3 * inch],
    ['3/16"', 'length', (3 / 16) * inch],
    ["2'", 'length', 24 * inch],
    ['300 g/m²', 'arealMass', 0.3],
    ['300 gsm', 'arealMass', 0.3],
    ['5.7 oz/yd^2', 'arealMass', (5.7 * (pound / 16)) / (36 * inch) ** 2],
    ['1.5 oz/ft^2', 'arealMass', (1.5 * (pound / 16)) / (12 * inch) ** 2],
    ['75 tex', 'linearDensity', 75e-6],
    ['1200 denier', 'linearDensity', 1200e-6 / 9],
    ['1333 dtex', 'linearDensity', 133.3e-6],
    ['1.7 N/tex', 'tenacity', 1.7e6],
    ['170 cN/tex', 'tenacity', 1.7e6],
    ['17 cN/dtex', 'tenacity', 1.7e6],
    ['20 g/denier', 'tenacity', (20e-3 * 9.80665) / (1e-6 / 9)],
    ['20 gf/den', 'tenacity', (20e-3 * 9.80665) / (1e-6 / 9)],
    ['26 Msi', 'modulus', (26e6 * poundForce) / inch ** 2],
    ['40 ksi', 'stress', (40e3 * poundForce) / inch ** 2],
    ['18 lbf/in', 'forcePerLength', (18 * poundForce) / inch],
    ['4.2 in·lbf/in²', 'toughness', (4.2 * poundForce) / inch],
    ['4.2 in-lb/in2', 'toughness', (4.2 * poundForce) / inch],
    ['4.2 in.lbf/in2', 'toughness', (4.2 * poundForce) / inch],
    ['736 J/m²', 'toughness', 736],
    ['0.736 kJ/m^2', 'toughness', 736],
    ['0.736 N/mm', 'toughness', 736],
    ['6.5 spi', 'perLength', 6.5 / inch],
    ['3 stitches per inch', 'perLength', 3 / inch],
    ['2.5 stitches/cm', 'perLength', 250],
    ['0.02e-6 1/K', 'expansion', 0.02e-6],
    ['22.5e-6/K', 'expansion', 22.5e-6],
    ['12.5e-6 1/degF', 'expansion', 12.5e-6 * 1.8],
    ['50 %', 'fraction', 0.5],
    ['0.5', 'fraction', 0.5],
    ['2000 microstrain', 'strain', 2e-3],
    ['2000 µε', 'strain', 2e-3],
    ['2000 ue', 'strain', 2e-3],
    ['-390.7·10⁻⁶', 'strain', -390.7e-6],
    ['−390.7 10⁻⁶', 'strain', -390.7e-6],
    ['22.5·10⁻⁶/K', 'expansion', 22.5e-6],
    ['22.5 10⁻⁶/K', 'expansion', 22.5e-6],
    ['22.5 * 10^-6 1/K', 'expansion', 22.5e-6],
    ['22.5e−6 1/K', 'expansion', 22.5e-6],
    ['1.739×10⁹ N/m', 'forcePerLength', 1.739e9],
    ['1.739·10^9 N/m', 'forcePerLength', 1.739e9],
    ['1.2e3×10⁶ N/m', 'forcePerLength', 1.2e9],
    ['3.343 x 10^7 N*mm', 'bendingStiffness', 3.343e4],
    ['3.343 X 10^(7) N·mm', 'bendingStiffness', 3.343e4],
    ['−1 1/2 in', 'length', -1.5 * inch],
    ['45', 'angle', 45],
    ['45°', 'angle', 45],
    ['80 1/min', 'rate', 80 / 60],
    ['80 stitches/min', 'rate', 80 / 60],
  ];
  it.each(cases)('%s as %s', (text, kind, expected) => close(si(text, kind), expected));

  it('takes a radian to degrees', () => close(si('1 rad', 'angle'), 180 / Math.PI));

  it('keeps the zero point of a temperature and drops it from a difference', () => {
    close(si('60 °C', 'temperature'), 333.15);
    close(si('140 degF', 'temperature'), 333.15);
    close(si('60 °C', 'temperatureChange'), 60);
    close(si('108 degF', 'temperatureChange'), 60);
    close(si('-100 K', 'temperatureChange'), -100);
  });

  it('reads units that are not prepared, through mathjs', () => close(si('2 rod', 'length'), 2 * 16.5 * 12 * inch));
});

describe('a quantity that cannot be read is refused with what is needed', () => {
  it('without unit: names the dimension and proposes units', () => {
    const found = problem('0.3', 'length');
    expect(found.code).toBe('unit-missing');
    expect(found.message).toContain('a length');
    expect(found.allowed).toContain('mm');
    expect(found.hint).toContain('0.3 mm');
  });
  it('with a wrong dimension: names both sides', () => {
    const found = problem('5 MPa', 'forcePerLength');
    expect(found.code).toBe('unit-mismatch');
    expect(found.message).toContain('mass·length⁻¹·time⁻²');
    expect(found.message).toContain('mass·time⁻²');
    expect(found.allowed).toContain('N/mm');
  });
  it('ounces of chopped mat per square foot are not ounces per square yard', () => {
    close(si('1.5 oz/ft^2', 'arealMass') / si('1.5 oz/yd^2', 'arealMass'), 9);
  });
  it('with a misspelled unit: the nearest that fits', () => {
    const found = problem('7 mn', 'length');
    expect(found.code).toBe('unit-unknown');
    expect(found.hint).toBe('did you mean `mm`?');
  });
  it.each([
    ['0,25 mm', '0.25'],
    ['1,200 denier', '1.200'],
  ])('a decimal comma or thousands mark is not guessed at: %s', (text, suggestion) => {
    const found = problem(text, 'length');
    expect(found.code).toBe('not-a-number');
    expect(found.hint).toContain(suggestion);
  });
  it.each(['', 'abc', 'mm', '1e999 mm', '1/0 in', 'NaN', '.inf', '3 + 4 mm', `1${'0'.repeat(200)} mm`])(
    '%s',
    (text) => {
      expect(['not-a-number', 'unit-unknown', 'unit-missing']).toContain(problem(text, 'length').code);
    },
  );
  it('F and C behind a temperature are degrees meant', () => {
    expect(problem('-108 F', 'temperatureChange').hint).toBe('did you mean `degF`?');
    expect(problem('60 C', 'temperature').hint).toBe('did you mean `degC`?');
    expect(problem('60 C', 'length').hint).toBeUndefined();
  });
  it('a word before a number is taken off in the hint', () =>
    expect(problem('Nm 110', 'number').hint).toBe('write `110` alone'));
  it('behind a power of ten: the unit alone is at fault', () => {
    const text = '1.739×10⁹ N/n';
    const found = problem(text, 'forcePerLength');
    expect(found.code).toBe('unit-unknown');
    expect(text.slice(found.within?.offset, (found.within?.offset ?? 0) + (found.within?.length ?? 0))).toBe('N/n');
    expect(problem('1.739×10⁹', 'forcePerLength')).toMatchObject({
      code: 'unit-missing',
      hint: 'write for example `1.739×10⁹ N/mm`',
    });
    expect(problem('−0,25 mm', 'length').hint).toContain('`−0.25`');
  });
  it('never evaluates an expression', () => {
    for (const text of [
      '2×10 mm',
      '2 x 10^2^2 mm',
      '2·10⁹·10⁹ mm',
      '2 x 3^4 mm',
      '2*3 mm',
      '1 mm + 1 mm',
      '1 import("x")',
      '1 f(x)=x',
      '1 mm; 2 mm',
    ]) {
      expect(parseQuantity(text, 'length').ok).toBe(false);
    }
  });
});

describe('every kind of quantity', () => {
  const names = Object.keys(kinds) as KindName[];
  it.each(names)('%s survives being printed and read again in both unit systems', (kind) => {
    for (const units of ['metric', 'us'] as const) {
      const shown = formatQuantity(1.2345678901, kind, { units, digits: 17 });
      const read = parseQuantity(shown, kind);
      expect(read.ok && Math.abs(read.value / 1.2345678901 - 1)).toBeLessThan(1e-9);
    }
  });
  it.each(names)('%s proposes only units that it accepts', (kind) => {
    for (const unit of [kinds[kind].si, kinds[kind].metric, kinds[kind].us, ...kinds[kind].alsoAccepted]) {
      expect(parseQuantity(`1 ${unit}`, kind), unit).toMatchObject({ ok: true });
    }
  });
});
