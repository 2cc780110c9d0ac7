import type { Block } from '../../src/report/index.js';
import type { ToughnessRow } from './compare-toughness.js';
import { type Bends, bendsOf } from './coupons.js';
import { type Gate, gates, isKept, type Weight } from './gates.js';
import { cases, comparisons, dataSets, entry, notBlind, rowOf } from './inputs.js';
import type { StitchValidation } from './results.js';
import { betweenMedians, bracketed, columnSummary, errorsOf, gainSummary } from './summary.js';
import { byFactor, digits, lawNames, overstated, straightBend } from './words.js';

const columns = ['steady', 'specimen'] as const;

function counts({ inPlane, zones, forms, toughness }: StitchValidation): string[] {
  const predicted = comparisons.filter(({ compare }) => compare !== 'none');
  const read = predicted.filter((one) => rowOf(one).access === 'read').length;
  const gates = predicted.filter(({ dataSet }) => entry(dataSets, dataSet).use === 'validate').length;
  return [
    `${comparisons.length} printed rows carry numbers; ${predicted.length} of them have a prediction: ${toughness.rigid.length} of toughness, ${zones.rigid.length} of lengths, ${forms.rigid.length} of limiting models, ${inPlane.length} in the plane (estimates that the print does not bear out, see below).`,
    `Of the predicted rows ${read} were read, ${predicted.length - read} are recalled; ${gates} may gate a test, the rest is context.`,
  ];
}

/** Both columns of one law over all toughness rows. */
function ofLaw(rows: readonly ToughnessRow[], bends: Bends): string[] {
  const name = lawNames[bends];
  const opening = rows.filter(({ row }) => row.loading === 'mode I');
  const all = columns.map((column) => {
    const { rows: n, mean, scatter, withinTwo, withinThree, inside } = columnSummary(rows, column);
    const open = columnSummary(opening, column);
    return `${name[0]?.toUpperCase()}${name.slice(1)}, ${column}: ${byFactor(mean)}, scatter a factor of ${digits(scatter)}; ${withinTwo} of ${n} rows within a factor of 2, ${withinThree} within 3; ${inside} of ${n} printed values in the range of nine in ten. In opening alone (${open.rows} rows): ${byFactor(open.mean)}, scatter ${digits(open.scatter)}.`;
  });
  const gains = columns.map((column) => {
    const { rows: n, mean, scatter, withinThree } = gainSummary(rows, column);
    return `${column} ${byFactor(mean)}, scatter ${digits(scatter)}, ${withinThree} of ${n} within a factor of 3`;
  });
  return [
    ...all,
    `Gain over the bond, ${name}: ${gains.join('; ')}.`,
    `In opening ${bracketed(opening)} of ${opening.length} printed toughnesses lie between the low end of the steady range and the high end of the specimen range by ${name}, ${betweenMedians(opening)} of ${opening.length} between the two medians. In sliding the specimen reads less than the steady value, since no row gives way in it.`,
  ];
}

/** "6 of 6" of the gates of one weight. */
function keptOf(all: readonly Gate[], weight: Weight): string {
  const those = all.filter((gate) => gate.weight === weight);
  return `${those.filter(isKept).length} of ${those.length}`;
}

function gateCount(found: StitchValidation): string {
  const all = gates(found);
  const beyond = all.filter(({ laws, passes }) =>
    bendsOf.some((bends) => !laws.includes(bends) && !passes[bends]),
  ).length;
  const circular = all.filter(({ weight }) => weight === 'circular').length;
  return `${keptOf(all, 'independent')} independent gates are kept, and ${keptOf(all, 'wide')} whose band is so wide that it says little; ${circular} more are not independent, since their band is made from the zones that they are asked of (the shortfall of 1 to 4), and do not count. ${beyond} of those asked of ${lawNames.rigid} alone would not be kept by ${lawNames.yielding}.`;
}

function statementCount({ statements }: StitchValidation): string {
  const checked = statements.flatMap(({ findings }) => findings ?? []);
  const by = bendsOf.map(
    (bends) => `${checked.filter((findings) => findings[bends].holds).length} by ${lawNames[bends]}`,
  );
  return `${statements.length} printed statements: ${checked.length} are checked, ${by.join(', ')} hold.`;
}

/** How far the arms of the specimens bend, and what that does to their reading. */
function bendWords({ predictions }: StitchValidation): string {
  const opening = Object.keys(cases).flatMap((id) => {
    const both = bendsOf.map((bends) => entry(predictions, id)[bends].opening?.bend);
    return both.every((bend) => bend !== undefined) ? [{ id, both }] : [];
  });
  const beyond = bendsOf.map(
    (bends, i) => `${opening.filter(({ both }) => (both[i] ?? 0) > straightBend).length} by ${lawNames[bends]}`,
  );
  const dense = bendsOf.map((bends) => {
    const bend = entry(predictions, 'uniweave-64')[bends].opening?.bend ?? Number.NaN;
    return `${bend.toFixed(2)} by ${lawNames[bends]}, where the loads read ${overstated(bend)} times what they should`;
  });
  return `Specimens bend far: of ${opening.length} cases in opening ${beyond.join(' and ')} pass a displacement of ${straightBend} of the crack length as a row gives way, where linear beams end; the dense case of chen-2001 comes to ${dense.join('; ')} (large-displacement factor of ISO 15024, recalled). So the specimen column of tough rows is too high, and the gate on chen-2001, whose upper end it is, is the weaker for it.`;
}

/** How the estimates in the plane lie to single printed values. */
function planeWords({ inPlane }: StitchValidation): string {
  const single = inPlane.filter(({ row }) => row.value !== undefined);
  const inside = single.filter(({ missedBy }) => missedBy === 0).length;
  const misses = single.map(({ missedBy }) => missedBy).filter((miss) => miss > 0);
  const [least, most] = [Math.min(...misses), Math.max(...misses)].map((miss) => digits(miss));
  return `In the plane nothing is foretold well: ${inside} of ${single.length} single printed values lie in the range of their estimate, the others miss it by ${least} to ${most} percentage points. The ranges are those of the parameters, no bounds: tension counts cut fibres alone and printed losses are far larger; gains are not covered at all.`;
}

/** Which way the two columns err. */
function wayWords({ toughness }: StitchValidation): string {
  const parts = bendsOf.map((bends) => {
    const rows = toughness[bends].filter(({ row }) => row.loading === 'mode I');
    const low = rows.filter(({ steady }) => steady.error < 0).length;
    const high = rows.filter(({ specimen }) => specimen.error > 0).length;
    return `by ${lawNames[bends]} the steady value is too low in ${low} of ${rows.length} rows and the specimen too high in ${high} of ${rows.length}`;
  });
  return `Neither column is on the safe side throughout: in opening ${parts.join('; ')}.`;
}

/** What print tells of the way to fail. */
function modeHits({ statements }: StitchValidation): string {
  const modes = statements.filter(({ check }) => check === 'armsBreak' || check === 'bothSites');
  const met = bendsOf.map((bends) => {
    const hits = modes.filter(({ findings }) => findings?.[bends].holds === true).length;
    return `${hits} of ${modes.length} by ${lawNames[bends]}`;
  });
  return `Ways to fail: the print at hand tells of the arms of one series and of both sites of a stitch; met ${met.join(', ')}. For no row of toughness does it tell what gave way.`;
}

/** "low" or "high" of the gain by a law, for the sentence on accuracy. */
function accuracy({ toughness }: StitchValidation): string {
  const parts = bendsOf.map((bends) => {
    const rows = toughness[bends].filter(({ row }) => row.loading === 'mode I');
    const { mean, scatter } = errorsOf(rows.flatMap(({ gain }) => gain?.steady ?? []));
    return `the steady gain in opening by ${lawNames[bends]} is ${byFactor(mean)} with a scatter of ${digits(scatter)}`;
  });
  return `Over these rows ${parts.join('; ')}. A realistic claim from yarn data alone is a factor of 2 to 3 on the gain (judgement); with a measured curve of a single stitch 30 to 50 % (judgement). Patterns and threads are ranked better than that where the way they fail is the same (judgement).`;
}

/** The page in short. */
export function summaryBlocks(found: StitchValidation): Block[] {
  return [
    {
      kind: 'paragraph',
      text: 'Predictions of stitched laminates beside what is in print: published value, prediction, and whether the one lies in the range of the other. Two laws stand side by side throughout: "rigid bends", threads that are held at the faces without giving way (bedding-in 0, which the library otherwise draws from its range), rods with the friction of threads; and "bends that give way", the face yielding under the thread, rods with their own friction.',
    },
    {
      kind: 'paragraph',
      text: `Inputs: reference-data/stitch-validation-inputs.json, each read, recalled or assumed, with its reason. ${notBlind} The ranges of the parameters (reference-data/stitch-priors.json) were fixed before any comparison, but for one: zoneShortfall, how much longer printed zones are than computed ones, is made from the printed zones that stand here.`,
    },
    { kind: 'heading', level: 2, text: 'At a glance', id: 'at-a-glance' },
    {
      kind: 'list',
      items: [
        ...counts(found),
        ...bendsOf.flatMap((bends) => ofLaw(found.toughness[bends], bends)),
        wayWords(found),
        bendWords(found),
        planeWords(found),
        modeHits(found),
        statementCount(found),
        gateCount(found),
      ],
    },
    { kind: 'heading', level: 2, text: 'What to expect', id: 'accuracy' },
    { kind: 'paragraph', text: accuracy(found) },
    {
      kind: 'paragraph',
      text: 'These rows are too few, and too many of their inputs assumed, to certify anything: they show where the model lies, not that it is right. A range of nine in ten is that of the parameters; it holds neither the error of the model nor that of assumed inputs.',
    },
  ];
}
