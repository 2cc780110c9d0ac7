import { describe, expect, it } from 'vitest';
import { bibliography, citation, entryOf, library } from '../../../packages/core/src/material/library.js';
import {
  entryNotes,
  entrySources,
  entryValues,
  libraryFibre,
  libraryResin,
} from '../../../packages/core/src/material/library-models.js';
import { SelvageError } from '../../../packages/core/src/problem/index.js';

describe('the library', () => {
  it('gives every fibre complete, in SI, with sources that the bibliography holds', () => {
    for (const id of Object.keys(library.fibres)) {
      const fibre = libraryFibre(id);
      expect(fibre, id).toBeDefined();
      for (const modulus of [fibre?.E1, fibre?.E2, fibre?.G12]) expect(modulus, id).toBeGreaterThan(1e8);
      expect(fibre?.density, id).toBeGreaterThan(900);
      for (const source of fibre?.sources ?? []) expect(bibliography[source], source).toBeDefined();
    }
  });

  it('gives every resin complete, in SI', () => {
    for (const id of Object.keys(library.resins)) {
      const resin = libraryResin(id);
      expect(resin?.E, id).toBeGreaterThan(1e9);
      expect(resin?.nu, id).toBeLessThan(0.5);
      expect(resin?.density, id).toBeGreaterThan(1000);
    }
  });

  it('converts units: 72.4 GPa of E-glass (jang-1994) is 7.24e10 Pa, 4.8e-6 1/K stays', () => {
    const fibre = libraryFibre('e-glass');
    expect(fibre?.E1).toBeCloseTo(72.4e9, -2);
    expect(fibre?.alpha1).toBeCloseTo(4.8e-6, 15);
    expect(fibre?.sources).toContain('jang-1994');
  });

  it('converts percent to fractions and degrees Celsius to kelvin', () => {
    const entry = library.resins['epoxy-infusion'];
    const values = entry === undefined ? {} : entryValues(entry);
    expect(values.waterUptake).toBeCloseTo(0.03, 12);
    expect(values.glassTransition).toBeCloseTo(85 + 273.15, 9);
  });

  it('leaves out of a fibre what the library does not know', () => {
    expect(Object.keys(libraryFibre('aramid-standard') ?? {})).not.toContain('nu23');
  });

  it('answers undefined for a name it has not, also for names that every object carries', () => {
    expect(libraryFibre('unobtainium')).toBeUndefined();
    expect(libraryFibre('constructor')).toBeUndefined();
    expect(libraryResin('__proto__')).toBeUndefined();
    expect(entryOf(library.threads, 'toString')).toBeUndefined();
  });

  it('completes a sewing thread with the values of its yarn, its own values first', () => {
    const thread = library.threads['aramid-75-tex'];
    const values = thread === undefined ? {} : entryValues(thread);
    expect(values.linearDensity).toBeCloseTo(75e-6, 12);
    expect(values.density).toBe(1440);
    expect(values.tenacity).toBeCloseTo(1.8e6, 3);
    expect(values.modulus).toBeCloseTo(50e6, 3);
    expect(thread?.values.modulus?.source).toBe('yarn-tensile-page');
  });

  it('gives every thread of a size what a stitch model needs', () => {
    for (const [id, thread] of Object.entries(library.threads)) {
      if (thread.values.linearDensity === undefined) continue;
      for (const name of ['density', 'tenacity', 'modulus', 'elongation', 'loopEfficiency']) {
        expect(thread.values[name]?.value, `${id} ${name}`).toBeGreaterThan(0);
      }
    }
  });

  it('names the sources of the values asked for, each once', () => {
    const entry = library.fibres['carbon-standard'];
    expect(entry && entrySources(entry, ['E1', 'E2', 'G12'])).toEqual(['nrc-1992', 'soden-1998']);
    expect(entry && entrySources(entry, ['Zt'])).toEqual([]);
  });

  it('says what is assumed and what to beware of', () => {
    const entry = library.fibres.hmpe;
    const notes = entry === undefined ? [] : entryNotes(entry, ['E1', 'E2']);
    expect(notes.map((note) => note.level)).toEqual(['warning', 'assumption']);
    expect(notes[1]?.text).toContain('E2 = 3 GPa is assumed');
  });

  it('cites a source by its key', () => {
    expect(citation('tsai-hahn-1980')).toContain('Introduction to Composite Materials');
  });

  it('refuses an unknown source key and offers the nearest', () => {
    let problem: unknown;
    try {
      citation('tsai-han-1980');
    } catch (error) {
      problem = error instanceof SelvageError ? error.problems[0] : error;
    }
    expect(problem).toMatchObject({ code: 'unknown-name', hint: 'did you mean `tsai-hahn-1980`?' });
  });
});
