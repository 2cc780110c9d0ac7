import { describe, expect, it } from 'vitest';
import { parseUnit } from '../../packages/core/src/quantity/index.js';
import { allEntries, allValues, tables } from './tables.js';

describe('every value of the reference data', () => {
  it('says where it comes from and how it was obtained', () => {
    expect(allValues.length).toBeGreaterThan(500);
    for (const [place, value] of allValues) {
      expect(Number.isFinite(value.value), place).toBe(true);
      expect(value.source, place).not.toBe('');
      expect(value.where.trim(), place).not.toBe('');
      expect(['published', 'measured', 'derived', 'assumed'], place).toContain(value.basis);
      expect(['read', 'quoted', 'recalled', 'computed', 'invented'], place).toContain(value.access);
      expect([undefined, 'high', 'medium', 'low'], place).toContain(value.confidence);
    }
  });

  it('has a unit that the quantity reader knows', () => {
    for (const [place, value] of allValues) {
      expect(typeof value.unit, place).toBe('string');
      expect(parseUnit(value.unit), `${place} in ${value.unit}`).toBeDefined();
    }
  });

  it('lies inside its own range', () => {
    for (const [place, value] of allValues) {
      expect(value.low ?? value.value, place).toBeLessThanOrEqual(value.value);
      expect(value.high ?? value.value, place).toBeGreaterThanOrEqual(value.value);
      expect(value.sd ?? 0, place).toBeGreaterThanOrEqual(0);
    }
  });

  it('is never called computed without being derived, nor read when its source is common practice', () => {
    for (const [place, value] of allValues) {
      if (value.access === 'computed') expect(value.basis, place).toBe('derived');
      if (value.source === 'common-practice') expect([value.access, value.basis], place).not.toContain('read');
      if (value.source === 'common-practice') expect(value.basis, place).not.toBe('published');
    }
  });
});

describe('the entries of the reference data', () => {
  it('have a label and at least one value, counted with what a thread inherits', () => {
    for (const [place, entry] of allEntries) {
      expect(entry.label, place).not.toBe('');
      expect(Object.keys(entry.values).length, place).toBeGreaterThan(0);
    }
  });

  it('give fabrics a fibre of the library, a positive areal mass and layers that add up', () => {
    for (const [id, fabric] of Object.entries(tables.fabrics)) {
      expect(tables.fibres[fabric.fibre], id).toBeDefined();
      expect(['ud', 'woven', 'multiaxial', 'mat'], id).toContain(fabric.architecture);
      expect([undefined, 'plain', 'twill', 'satin'], id).toContain(fabric.weave);
      expect(fabric.values.arealMass?.value, id).toBeGreaterThan(0);
      expect(fabric.layers !== undefined, id).toBe(fabric.architecture === 'multiaxial');
      const shares = (fabric.layers ?? []).reduce((sum, layer) => sum + layer.share, 0);
      if (fabric.layers !== undefined) expect(shares, id).toBeCloseTo(1, 12);
    }
  });

  it('let a thread inherit only from an entry that exists, without a circle', () => {
    for (const id of Object.keys(tables.threads)) {
      const seen = new Set<string>();
      for (let at: string | undefined = id; at !== undefined; at = tables.threads[at]?.inherits) {
        expect(tables.threads[at], `${id} inherits from ${at}`).toBeDefined();
        expect(seen.has(at), `${id} inherits from itself by way of ${at}`).toBe(false);
        seen.add(at);
      }
    }
  });

  it('give plies that are thermodynamically admissible: positive moduli and nu12^2 < E1/E2', () => {
    for (const [id, { values }] of Object.entries(tables.plies)) {
      const [E1, E2, G12, nu12] = ['E1', 'E2', 'G12', 'nu12'].map((name) => values[name]?.value ?? Number.NaN);
      for (const modulus of [E1, E2, G12]) expect(modulus, id).toBeGreaterThan(0);
      expect(nu12! ** 2, id).toBeLessThan(E1! / E2!);
    }
  });
});
