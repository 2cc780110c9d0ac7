import { describe, expect, it } from 'vitest';
import { designInputs } from '../../../../packages/core/src/design/index.js';
import { renderProblems, SelvageError } from '../../../../packages/core/src/problem/index.js';
import { searchProblem } from '../../../../packages/core/src/study/search/index.js';
import { problemsIn } from '../../design/faults.js';
import { withSearch } from './designs.js';

/** The first problem of a design's search: its code, and the line and what is underlined. */
function complaint(text: string): string {
  try {
    searchProblem(designInputs(text));
    return 'nothing';
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    const [problem] = error.problems;
    expect(renderProblems(error.problems)).toContain('^');
    const { excerpt = '', column = 1, length = 0 } = problem!.where ?? {};
    return `${problem!.code}: ${excerpt.slice(column - 1, column - 1 + length)}`;
  }
}

const stack = (rest: string): string => `  stack: { laminate: skin, ${rest} }\n`;
const plain = stack('angles: [0, 45, -45, 90], plies: 4');
const aim = '  minimise: [laminates.skin.arealMass]\n';

describe('what can be wrong with a search, and where it says so', () => {
  it.each([
    ['unknown laminate', `  stack: { laminate: skim, angles: [0], plies: 2 }\n${aim}`, 'unknown-name: skim'],
    ['unknown material', `${stack('materials: [ud, udd], angles: [0], plies: 2')}${aim}`, 'unknown-name: udd'],
    ['no choices', `${stack('plies: 2')}${aim}`, 'missing-key: stack'],
    ['choices twice', `${stack('choices: [0], angles: [0], plies: 2')}${aim}`, 'contradiction: stack'],
    ['materials without angles', `${stack('materials: [ud], plies: 2')}${aim}`, 'missing-key: stack'],
    ['plies that are not whole', `${stack('angles: [0], plies: [2, 2.5]')}${aim}`, 'out-of-range: 2.5'],
    [
      'no such outer ply',
      `${stack('angles: [0], plies: 2, outer: { angle: 30 }')}${aim}`,
      'unknown-name: { angle: 30 }',
    ],
    ['no such outer angle', `${stack('angles: [0], plies: 2, outer: 30')}${aim}`, 'unknown-name: 30'],
    [
      'a group across the mid-plane',
      `${stack('angles: [0, 90], plies: 2, symmetric: true, grouping: 1')}${aim}`,
      'contradiction: stack',
    ],
    ['no balance', `${stack('angles: [45, 30], plies: 2, balanced: true')}${aim}`, 'contradiction: stack'],
    ['unknown key', `${stack('angels: [0], plies: 2')}${aim}`, 'unknown-key: angels'],
    ['too many plies', `${stack('angles: [0], plies: 300')}${aim}`, 'out-of-range: 300'],
    ['no aim', plain, 'missing-key: search'],
    [
      'an aim twice',
      `${plain}${aim}  maximise: [laminates.skin.arealMass]\n`,
      'contradiction: laminates.skin.arealMass',
    ],
    [
      'an aim that is nowhere',
      `${plain}  minimise: [laminates.skin.arealMas]\n`,
      'unknown-name: laminates.skin.arealMas',
    ],
    ['nothing that varies', aim, 'missing-key: search'],
    [
      'a limit without unit',
      `${plain}${aim}  constraints: [{ quantity: laminates.skin.thickness, atMost: 3 }]\n`,
      'unit-missing: 3',
    ],
    [
      'no limit',
      `${plain}${aim}  constraints: [{ quantity: laminates.skin.thickness }]\n`,
      'missing-key: { quantity: laminates.skin.thickness }',
    ],
    [
      'limits that cross',
      `${plain}${aim}  constraints: [{ quantity: laminates.skin.thickness, atLeast: 3 mm, atMost: 2 mm }]\n`,
      'contradiction: { quantity: laminates.skin.thickness, atLeast: 3 mm, atMost: 2 mm }',
    ],
    [
      'a limit on what is nowhere',
      `${plain}${aim}  constraints: [{ quantity: loads.pul.N.0, atLeast: 3 N/m }]\n`,
      'unknown-name: loads.pul.N.0',
    ],
    [
      'an input that is nowhere',
      `${aim}  vary: { stitching.row.pitch: [3 mm] }\n`,
      'unknown-name: stitching.row.pitch',
    ],
    [
      'an input whose last name is misspelt',
      `${aim}  vary: { materials.ud.thicknes: [0.2 mm] }\n`,
      'unknown-key: materials.ud.thicknes',
    ],
    [
      'a value that an input does not take',
      `${aim}  vary: { stitching.rows.pitch: [3 mm, 4 kg] }\n`,
      'unit-mismatch: 4 kg',
    ],
    [
      'a stack that varies twice',
      `${plain}${aim}  vary: { laminates.skin.stack: ["[0]"] }\n`,
      'contradiction: laminates.skin.stack',
    ],
    ['a method that is none', `${plain}${aim}  method: genetic\n`, 'not-a-choice: genetic'],
    ['a seed that is not whole', `${plain}${aim}  seed: 1.5\n`, 'out-of-range: 1.5'],
    [
      'too much to go through',
      `${stack('angles: [0, 15, 30, 45, 60, 75, 90], plies: 20')}${aim}  method: exhaustive\n`,
      'too-large: exhaustive',
    ],
  ])('%s', (_, search, expected) => {
    expect(complaint(withSearch(search))).toBe(expected);
  });

  it.each([
    ['plies = 0 is out of range', stack('angles: [0], plies: 0')],
    ['plies = 0 is out of range', stack('angles: [0], plies: [2, 0]')],
    ['grouping = 0 is out of range', stack('angles: [0], plies: 2, grouping: 0')],
    ['angleJump = 100 is out of range', stack('angles: [0], plies: 2, angleJump: 100')],
    ['keep = 0 is out of range', `${plain}  keep: 0\n`],
    ['seed = 4294967296 is out of range', `${plain}  seed: 4294967296\n`],
  ])('in short words: %s', (message, search) => {
    const [problem] = problemsIn(() => searchProblem(designInputs(withSearch(`${search}${aim}`))));
    expect(problem?.message).toBe(message);
  });

  it('with limits to their last digit', () => {
    const [problem] = problemsIn(() => designInputs(withSearch(`${plain}${aim}  seed: 4294967296\n`)));
    expect(problem?.allowed).toContain('from 0 to 4294967295');
  });

  it('a stack that is written as a list', () => {
    const listed = withSearch(`${plain}${aim}`).replace('stack: "[0/90]s" }', 'stack: [0, 90] }');
    expect(complaint(listed)).toBe('contradiction: [0, 90]');
  });

  it('a hard target whose limits are given twice', () => {
    const twice = withSearch(`${plain}${aim}`).replace('atLeast: 1.05 }', 'atLeast: 1.05, within: [1, 2] }');
    expect(complaint(twice)).toMatch(/^contradiction: \{ quantity: loads\.pull/);
  });

  it('no search at all', () => {
    const none = withSearch('').replace('search:\n', '');
    expect(() => searchProblem(designInputs(none))).toThrow('the design has no `search`');
  });
});

describe('what a search takes', () => {
  const problemOf = (search: string) => searchProblem(designInputs(withSearch(`${search}${aim}`)));
  const notesOf = (search: string) => problemOf(search).notes.map(({ level, text }) => `${level}: ${text}`);

  it('a bare angle for the outer ply, as the ply it is', () => {
    const outerOf = (given: string) =>
      problemOf(stack(`angles: [0, 45], plies: 2, outer: ${given}`)).space?.rules.outer;
    expect(outerOf('45')).toBe(1);
    expect(outerOf('{ angle: 45 }')).toBe(1);
  });

  it('lists without repetition in silence', () => {
    expect(notesOf(plain)).toEqual([]);
    expect(notesOf(stack('angles: [0, 45, -45], plies: [2, 3], balanced: true'))).toEqual([]);
  });

  it('what is listed twice once, and says so', () => {
    expect(notesOf(stack('angles: [0, 0, 90, -90], plies: [4, 4, 5]'))).toEqual([
      'assumption: `plies` lists 4 2 times: it counts once.',
      'assumption: ud at 0° is listed 2 times, half turns counted as the same: it counts once.',
      'assumption: ud at 90° is listed 2 times, half turns counted as the same: it counts once.',
    ]);
    expect(notesOf('  vary: { stitching.rows.pitch: [4 mm, 3 mm, 0.4 cm] }\n')).toEqual([
      'assumption: `stitching.rows.pitch` lists 4 mm and 0.4 cm, which are one: it counts once.',
    ]);
  });

  it('plies that balance leaves no use for, and says so', () => {
    expect(notesOf(stack('angles: [0, 30, 45, -45], plies: 4, balanced: true'))).toEqual([
      'warning: No stack holds ud at 30°: it is to be balanced, and no choice is ud at -30°.',
    ]);
  });
});

describe('how a search goes about it when the design does not say', () => {
  const methodOf = (plies: number) => {
    const { method, evaluator, size } = searchProblem(
      designInputs(withSearch(`${stack(`angles: [0, 45, -45, 90], plies: ${plies}`)}${aim}`)),
    );
    return [method, evaluator.path, size.candidates];
  };

  it('goes through up to ten million laminates and breeds beyond', () => {
    expect(methodOf(11)).toEqual(['exhaustive', 'kernel', 4n ** 11n]);
    expect(methodOf(12)).toEqual(['nsga2', 'kernel', 4n ** 12n]);
  });

  it('counts stacks that can never be gone through exactly', () => {
    expect(methodOf(150)[2]).toBe(4n ** 150n);
  });
});
