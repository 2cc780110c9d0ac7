import { assemble, type Block, type Report, readDesign, report } from '@selvage/core';
import { describe, expect, it } from 'vitest';

/** Invented: a thin skin whose checks fail, and a sandwich whose core shears long before a layer breaks. */
const text = `format: 1
title: T
materials:
  ud: { kind: ply, E1: 135 GPa, E2: 9.2 GPa, G12: 4.8 GPa, nu12: 0.3, thickness: 0.2 mm, strengths: { Xt: 1700 MPa, Xc: 1100 MPa, Yt: 48 MPa, Yc: 190 MPa, S: 75 MPa }, expansion: { alpha1: -0.3e-6 1/K, alpha2: 29e-6 1/K } }
  foam: { kind: core, thickness: 10 mm, E: 90 MPa, G: 30 MPa, nu: 0.32, S: 0.2 MPa, density: 80 kg/m^3 }
laminates:
  skin:
    letters: { u: ud }
    stack: "[0u/90u]s"
    freeEdge: { strain: 2 %, temperatureChange: -60 K, toughness: 40 J/m^2 }
    panel: { length: 300 mm, width: 200 mm, compression: [100 N/mm, 0 N/mm] }
    blister: { shape: circle, interface: 1, length: 30 mm, strain: [-0.6 %, 0 %, 0 %], toughness: 150 J/m^2 }
  sw: { letters: { u: ud, f: foam }, stack: "[0u/90u/0f~]s" }
  bent: { material: ud, stack: "[0/90]" }
loads:
  pull: { laminate: skin, N: [100 kN/m, 0 N/m, 0 N/m] }
  again: { laminate: skin, N: [50 kN/m, 0 N/m, 0 N/m] }
  bend: { laminate: sw, M: [100 N, 0 N, 0 N], shear: [3 kN/m, 0 N/m] }
  cool: { laminate: bent, temperatureChange: -60 K }
`;
const of = (design: string, summary = false): Report => report(assemble(readDesign(design)), { summary });
const whole = of(text);
const overview = of(text, true);
const lists = (blocks: readonly Block[]): string[] =>
  blocks.flatMap((block) => (block.kind === 'list' ? block.items : []));
const notes = (blocks: readonly Block[]) => blocks.flatMap((block) => (block.kind === 'notes' ? block.notes : []));
function section({ blocks }: Report, id: string): Block[] {
  const start = blocks.findIndex((block) => block.kind === 'heading' && block.id === id);
  const end = blocks.findIndex((block, i) => i > start && block.kind === 'heading' && block.level === 2);
  return blocks.slice(start, end);
}
const table = ({ blocks }: Report, id: string) => {
  const found = blocks.find((block) => block.kind === 'table' && block.id === id);
  if (found?.kind !== 'table') throw new Error(`no table ${id}`);
  return found;
};
const figure = ({ blocks }: Report, id: string) => {
  const found = blocks.find((block) => block.kind === 'figure' && block.id === id);
  if (found?.kind !== 'figure') throw new Error(`no figure ${id}`);
  return found;
};
// biome-ignore lint/suspicious/noExplicitAny: a JSON document has no type
const data = whole.data as any;

describe('the overview', () => {
  it('says whatever does not hold as given, by any check', () => {
    const said = lists(overview.blocks);
    for (const what of [
      /^FAILS: laminate skin, the panel buckles at 0\.\d+ of the compression as given$/,
      /^FAILS: laminate skin, the blister grows at/,
      /^FAILS: laminate skin, a crack at the free edge grows/,
      /^FAILS: load bend, the core shears at 0\.\d+ of the load$/,
    ]) {
      expect(said.filter((item) => what.test(item))).toHaveLength(1);
    }
    expect(said.filter((item) => item.startsWith('FAILS'))).toHaveLength(4);
  });

  it('counts a blister that buckles as a failure only where nothing tells whether it grows', () => {
    const open = lists(of(text.replace(/(blister: .*), toughness: 150 J\/m\^2/, '$1'), true).blocks);
    expect(open.filter((item) => /^FAILS: laminate skin, the blister buckles at/.test(item))).toHaveLength(1);
    expect(open.filter((item) => /the blister grows/.test(item))).toEqual([]);
  });

  it('has the numbers of the JSON document in its tables', () => {
    const { skin } = data.laminates;
    const numbers = table(overview, 'checks').rows.map((row) => (typeof row[2] === 'object' ? row[2].value : row[2]));
    expect(numbers).toEqual([
      skin.panel.buckling.withShear.multiplier,
      skin.blister.multiplier,
      skin.blister.growthMultiplier,
      40 / skin.freeEdge.critical.G,
    ]);
    const bend = table(overview, 'loads').rows.find(([name]) => name === 'bend')!;
    expect(bend.slice(6)).toMatchObject([
      { value: data.loads.bend.sandwich.tool.x.ratio },
      { value: data.loads.bend.sandwich.coreShear.ratio },
    ]);
    const pull = table(overview, 'loads').rows.find(([name]) => name === 'pull')!;
    expect(pull.slice(6)).toEqual(['–', '–']);
  });

  it('names whom a warning concerns, and says each once', () => {
    const warned = notes(overview.blocks);
    expect(warned.every(({ level, text: words }) => level === 'warning' && /^\((laminate|load) /.test(words))).toBe(
      true,
    );
    const texts = warned.map(({ text: words }) => words.replace(/^\([^)]*\) /, ''));
    expect(new Set(texts).size).toBe(texts.length);
  });

  it('has no table of checks where the design asks for none', () => {
    const plain = of(text.replace(/ {4}(freeEdge|panel|blister): .*\n/g, ''), true);
    expect(plain.blocks.some((block) => block.kind === 'table' && block.id === 'checks')).toBe(false);
  });
});

describe('the verdict on a sandwich', () => {
  const said = lists(section(whole, 'load-bend'));
  it('is that of its weakest part', () => {
    expect(said).toEqual(
      expect.arrayContaining([expect.stringMatching(/^THE CORE SHEARS FIRST, at 0\.\d+ of the load$/)]),
    );
    expect(said.some((item) => item.startsWith('no layer breaks'))).toBe(false);
    expect(said.some((item) => /^shear of the core .* left out here: the core shears at/.test(item))).toBe(true);
  });
  it('names the part that ends a load which holds', () => {
    const small = lists(section(of(text.replace('shear: [3 kN/m', 'shear: [1 kN/m')), 'load-bend'));
    expect(small.some((item) => /^the core shears first, at 2\.\d+ times the load/.test(item))).toBe(true);
  });
});

describe('notes of load cases', () => {
  it('say an assumption once, a warning with every load', () => {
    const texts = (id: string) => notes(section(whole, id)).map(({ text: words }) => words);
    expect(texts('load-pull').some((words) => words.startsWith('Puck with inclinations'))).toBe(true);
    expect(notes(section(whole, 'load-again')).filter(({ level }) => level === 'assumption')).toEqual([]);
    expect(texts('load-bend').some((words) => words.startsWith('Puck with inclinations'))).toBe(false);
    expect(texts('load-bend').some((words) => /core without strengths/.test(words))).toBe(true);
  });
});

describe('figures', () => {
  it('stand G at the interfaces on stems, one each, with no line between', () => {
    const { svg } = figure(whole, 'laminate-skin--free-edge-release');
    const counted = data.laminates.skin.freeEdge.interfaces.filter(
      (one: { single?: object }) => one.single !== undefined,
    );
    expect(svg.match(/class="sv-stem/g)).toHaveLength(counted.length);
  });

  it('end the deformation at one and a half times that before the last failure, and say where it goes', () => {
    const { steps, curve } = data.loads.bend.progressive;
    const before = steps.findLast((step: { cascade: boolean }) => !step.cascade).before.curvature[0];
    const beyond = lists(section(whole, 'load-bend')).filter((item) => item.startsWith('Beyond the end'));
    const most = Math.max(...steps.map((step: { after: { curvature: number[] } }) => step.after.curvature[0]));
    expect(beyond).toHaveLength(most > 1.5 * before ? 1 : 0);
    expect(most).toBeGreaterThan(
      Math.max(...curve.slice(0, 2).map((point: { curvature: number[] }) => point.curvature[0])),
    );
    const end = Number(/κx[^.]* from 0 to ([\d.]+)/.exec(figure(whole, 'load-bend-progress').alt)?.[1]);
    expect(end).toBeLessThan(2 * before);
  });
});

describe('the warning of a saddle', () => {
  it('names its cause, and stands only where the shape is called a saddle', () => {
    const saddles = (design: string, id: string) =>
      notes(section(of(design), id)).filter(({ text: words }) => words.includes('to a saddle'));
    expect(saddles(text, 'load-cool')).toMatchObject([
      { text: expect.stringMatching(/^A change of temperature curves/) },
    ]);
    for (const stack of ['[0/90]', '[0_3/90]', '[0/30]', '[30/-30]', '[0/10/90]', '[0_8/90]']) {
      const design = text.replace('stack: "[0/90]"', `stack: "${stack}"`);
      const called = lists(section(of(design), 'load-cool')).join('\n');
      expect(saddles(design, 'load-cool').length > 0, stack).toBe(/saddle/.test(called));
    }
  });
});
