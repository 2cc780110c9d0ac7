import { describe, expect, it } from 'vitest';
import { checkAnswers, readAnswers } from '../../../packages/core/src/answers/index.js';
import { assemble, readDesign } from '../../../packages/core/src/design/index.js';
import { answersReport, render } from '../../../packages/core/src/report/index.js';

const model = assemble(
  readDesign(`format: 1
title: Homework
materials:
  ud: { kind: ply, E1: 181 GPa, E2: 10.3 GPa, G12: 7.17 GPa, nu12: 0.28, thickness: 5 mm }
laminates:
  three: { material: ud, stack: "[0/30/-45]" }
`),
);

/** The right numbers are those of the worked example in Kaw 2006, ch. 4 (recalled, not re-read): reference-data, clt.json. */
const sheet = (entries: readonly string[]) =>
  answersReport(checkAnswers(model, readAnswers(`answers:\n${entries.map((entry) => `  - { ${entry} }\n`).join('')}`)));

const text = (entries: readonly string[]): string => render(sheet(entries), 'text', { width: 160 });

describe('the report on a sheet of answers', () => {
  it('says that all are right, in the units of the student', () => {
    const printed = text(['quantity: A11, value: 1.739e9, unit: N/m', 'quantity: three.B11, value: -3129 kN']);
    expect(printed).toContain('All 2 answers are right.');
    expect(printed).toMatch(/laminates\.three\.A11 +right +1\.739e9 N\/m +1\.739e9 N\/m /);
    expect(printed).not.toContain('What to look at');
  });

  it('names the slip, what to look at, and what the answers have in common', () => {
    const printed = text([
      'quantity: A11, value: 1739 kN/mm',
      'quantity: B11, value: 3129 kN',
      'quantity: B16, value: 1072 kN',
      'quantity: D11, value: 29.79 kN*m',
      'quantity: A22, value: 900 N/mm',
    ]);
    expect(printed).toContain('1 of 5 answers are right');
    expect(printed).toContain('3 are what a known slip gives');
    expect(printed).toContain('1 is wrong in a way that no known slip explains');
    expect(printed).toMatch(/laminates\.three\.B16 +slip 1 or 2 /);
    expect(printed).toMatch(/laminates\.three\.D11 +slip 3 /);
    expect(printed).toContain('Slip 1, the plies taken in reversed order: laminates.three.B11, laminates.three.B16.');
    expect(printed).toContain('The first ply of the code');
    expect(printed).toContain('2 of 4 answers that are not right follow from the plies taken in reversed order.');
  });

  it('gives the right value of a wrong answer with its deviation', () => {
    expect(text(['quantity: A22, value: 500 kN/mm'])).toMatch(/wrong +500 kN\/mm +453\.3 kN\/mm +\+10\.3 %\n/);
  });

  it('gives a large deviation as how many times the right value the answer is', () => {
    const printed = text([
      'quantity: A11, value: 1.739e9 N/mm',
      'quantity: B11, value: 31.29e9 N',
      'quantity: A22, value: 4.9e9 N/m',
      'quantity: A66, value: 5.1e9 N/m',
    ]);
    expect(printed).toMatch(/1\.739e9 N\/mm +1739\d{3} N\/mm +1000 times\n/);
    expect(printed).toMatch(/31\.29e9 N +-312\d{4} N +-10000 times\n/);
    expect(printed).toMatch(/4\.9e9 N\/m +4\.533e8 N\/m +\+981 %\n/);
    expect(printed).toMatch(/5\.1e9 N\/m +4\.525e8 N\/m +11\.3 times\n/);
  });

  it('writes what is as good as zero as zero, and a power of ten behind a dot', () => {
    const printed = text(['quantity: plies.2.z_k, value: 7.5 mm', 'quantity: A11, value: 1.9·10³ kN/mm']);
    expect(printed).toMatch(/z_k +slip 1 +7\.5 mm +0 mm *\n/);
    expect(printed).toMatch(/A11 +wrong +1\.9·10³ kN\/mm +1739 kN\/mm /);
  });

  it.each(['text', 'markdown', 'html', 'csv'] as const)('has the verdict beside the quantity in %s', (format) => {
    const printed = render(sheet(['quantity: A11, value: 1739 kN/mm']), format);
    const at = (word: string): number => printed.indexOf(word);
    expect(at('Quantity')).toBeGreaterThanOrEqual(0);
    expect(at('Verdict')).toBeGreaterThan(at('Quantity'));
    expect(at('Yours')).toBeGreaterThan(at('Verdict'));
  });

  it('can be written in every format', () => {
    const report = sheet([
      'quantity: A11, value: 1739 kN/mm',
      'quantity: B11, value: 3129 kN',
      'quantity: A16, value: 0 N/m',
    ]);
    for (const format of ['text', 'markdown', 'html', 'json', 'csv'] as const) {
      expect(render(report, format).length).toBeGreaterThan(100);
    }
    const data = JSON.parse(render(report, 'json')) as {
      counts: unknown;
      answers: { verdict: string; right: number }[];
    };
    expect(data.counts).toEqual({ right: 1, rounded: 0, slip: 1, wrong: 1 });
    expect(data.answers.map(({ verdict }) => verdict)).toEqual(['right', 'slip', 'wrong']);
    expect(data.answers[0]?.right).toBeCloseTo(1.739e9, -6);
  });
});
