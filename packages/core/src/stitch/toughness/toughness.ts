import { fail } from '../../problem/index.js';
import { type Note, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import type { Working } from '../../working/index.js';
import { inMillimetres, requireNotNegative, requirePositive } from '../check.js';
import {
  armCeiling,
  type BridgingZone,
  bridgingLength,
  bridgingZone,
  type Discreteness,
  discreteness,
  pairStiffness,
} from './lengths.js';
import { showToughness } from './toughness-steps.js';
import type { Toughness, ToughnessInput } from './toughness-types.js';

const mm = (length: number) => `${Number((length * 1e3).toPrecision(2))} mm`;
const kJ = (G: number) => `${Number((G / 1000).toPrecision(3))} kJ/m^2`;

/**
 * Toughness of a laminate with stitches across the crack, G = G0 + N W in the steady state, and what stands in its way: a zone that needs room,
 * rows that break one by one, arms that break first.
 *
 * The steady value is the lower, design value; a test with aligned rows reads more, by the factor of {@link discreteness}.
 * Not covered: growth before the zone is full, staggered rows, mixed modes, fatigue. Arm, rows and length belong to opening.
 * @param working takes down the steps
 * @throws out-of-range density not above 0; bond toughness below 0; arm, row distance or length not above 0; missing-key rows or length without arm
 * @source Bao and Suo 1992 (steady state); lengths by an independent script, factors by it and by this library, docs/theory/stitch-toughness.md
 */
export function toughness(input: ToughnessInput, working?: Working): Toughness {
  const found = toughnessOf(input);
  if (working !== undefined) {
    showToughness(input, found, working);
    working.notes(found.notes.filter(({ text }) => !input.law.notes.some((note) => note.text === text)));
  }
  return found;
}

function toughnessOf(input: ToughnessInput): Toughness {
  const { law, penetrationDensity, bondToughness, arm } = input;
  check(input);
  const increment = penetrationDensity * law.work;
  const result = { bond: bondToughness, increment, sources: uniqueSources(law.sources, ['bao-suo-1992']) };
  const steady = bondToughness + increment;
  if (arm === undefined) {
    const text = 'toughness holds once the crack has grown so far that the bridged zone is full: tens of millimetres';
    const note: Note = { level: 'assumption', text, source: 'tong-mouritz-bannister-2002' };
    return { ...result, steady, usable: steady, notes: uniqueNotes([...law.notes, note]) };
  }
  const other = input.otherArm ?? arm;
  const length = bridgingLength(pairStiffness(arm, other), penetrationDensity, law);
  const zone = bridgingZone(length, law.measured === true);
  const ceiling = armCeiling(arm, other);
  const rows = input.rowDistance === undefined ? undefined : discreteness(input.rowDistance, length);
  const short = input.length !== undefined && input.length < zone.needed;
  return {
    ...result,
    ...(!short && { steady, usable: Math.min(steady, ceiling ?? steady) }),
    bridgingLength: length,
    zone,
    ...(rows && { discreteness: rows }),
    ...(ceiling !== undefined && { ceiling }),
    notes: uniqueNotes([
      ...law.notes,
      lengthNote(input, zone, short),
      ...(rows ? rowNotes(rows, short) : []),
      ...(ceiling !== undefined && ceiling < steady ? [ceilingNote(ceiling, steady, short)] : []),
    ]),
    sources: uniqueSources(result.sources, [
      'independent-script',
      'selvage-2026-derivation',
      'tong-mouritz-bannister-2002',
    ]),
  };
}

function check({ penetrationDensity, bondToughness, arm, otherArm, rowDistance, length }: ToughnessInput): void {
  requirePositive('penetrationDensity', penetrationDensity, (N) => `${N} 1/m^2`);
  requireNotNegative('bondToughness', bondToughness, (G) => `${G} J/m^2`);
  for (const one of [arm, otherArm]) {
    if (one === undefined) continue;
    requirePositive('bendingStiffness of the arm', one.bendingStiffness, (D) => `${D} N m`);
    requirePositive('thickness of the arm', one.thickness, inMillimetres);
    if (one.failureStrain === undefined) continue;
    requirePositive('failureStrain of the arm', Math.min(one.failureStrain.tension, one.failureStrain.compression));
  }
  for (const [name, value] of Object.entries({ rowDistance, length })) {
    if (value === undefined) continue;
    requirePositive(name, value, inMillimetres);
    if (arm === undefined) {
      fail({
        code: 'missing-key',
        message: `${name} is given without the arm beside the crack, whose stiffness sets the length of the bridged zone`,
        hint: 'the bending stiffness and thickness of the arm',
      });
    }
  }
}

function lengthNote({ length, law }: ToughnessInput, zone: BridgingZone, short: boolean): Note {
  const range = `${mm(zone.low)} to ${mm(zone.high)}`;
  if (!short) {
    const text = `bridged zone ${range} long as computed; the growth among the stitches that a steady toughness needs is taken as ${mm(zone.needed)}, ${whyNeeded(zone, law.measured)}; zones read in print are 10 to 50 mm long`;
    return { level: 'assumption', text, source: 'tong-mouritz-bannister-2002' };
  }
  return {
    level: 'warning',
    text: `no steady toughness: ${mm(length ?? 0)} of growth among the stitches is less than the ${mm(zone.needed)} that a bridged zone may need, ${whyNeeded(zone, law.measured)}; the zone is ${range} long as computed; judge the rows one by one`,
    source: 'tong-mouritz-bannister-2002',
  };
}

/** Where the growth that a steady value needs comes from. */
function whyNeeded({ needed, high }: BridgingZone, measured: boolean | undefined): string {
  if (measured === true) return 'the longest computed zone';
  return `${needed / high} times the longest computed zone, since printed zones are up to that much longer than computed ones`;
}

function rowNotes({ ratio, testFactor }: Discreteness, short: boolean): Note[] {
  const rows = `rows are ${Number(ratio.toPrecision(2))} bridging lengths apart`;
  if (testFactor === undefined) {
    const text = `${rows}, beyond the computed cases (1.5): each row acts on its own and a test reads strength, not toughness`;
    return [{ level: 'warning', text, source: 'independent-script' }];
  }
  if (short || testFactor.high < 1.1) return [];
  const times = `${testFactor.low.toFixed(1)} to ${testFactor.high.toFixed(1)}`;
  const text = `${rows}: a test with aligned rows, worked from the loads at onset, reads ${times} times the steady toughness (computed, ten cases of threads that break; stitches that only pull out read no more than it); by area it reads high too, since jumps set energy free; design with the steady one`;
  return [{ level: 'warning', text, source: 'selvage-2026-derivation' }];
}

function ceilingNote(ceiling: number, steady: number, short: boolean): Note {
  const wanted = short ? 'what the stitches could give' : `the steady toughness of ${kJ(steady)}`;
  return {
    level: 'warning',
    text: `the arms break at about ${kJ(ceiling)}, below ${wanted}: more stitches add nothing; a test needs tabs on the arms until they stand 1.5 times the expected value`,
  };
}
