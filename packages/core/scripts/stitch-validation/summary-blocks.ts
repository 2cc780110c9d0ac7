import type { Block } from '../../src/report/index.js';
import type { ToughnessRow } from './compare-toughness.js';
import { type Bends, bendsOf } from './coupons.js';
import { gates, isKept } from './gates.js';
import { comparisons, dataSets, entry, notBlind, rowOf } from './inputs.js';
import type { StitchValidation } from './results.js';
import { betweenMedians, bracketed, columnSummary, errorsOf, gainSummary } from './summary.js';
import { byFactor, digits, lawNames } from './words.js';

const columns = ['steady', 'specimen'] as const;

function counts({ inPlane, zones, forms, toughness }: StitchValidation): string[] {
  const predicted = comparisons.filter(({ compare }) => compare !== 'none');
  const read = predicted.filter((one) => rowOf(one).access === 'read').length;
  const gates = predicted.filter(({ dataSet }) => entry(dataSets, dataSet).use === 'validate').length;
  return [
    `${comparisons.length} printed rows carry numbers; ${predicted.length} of them have a prediction: ${toughness.rigid.length} of toughness, ${zones.rigid.length} of lengths, ${forms.rigid.length} of limiting models, ${inPlane.length} in the plane.`,
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

function gateCount(found: StitchValidation): string {
  const all = gates(found);
  const kept = all.filter(isKept).length;
  const beyond = all.filter(({ laws, passes }) =>
    bendsOf.some((bends) => !laws.includes(bends) && !passes[bends]),
  ).length;
  return `${kept} of ${all.length} gates are kept; ${beyond} of those asked of ${lawNames.rigid} alone would not be kept by ${lawNames.yielding}.`;
}

function statementCount({ statements }: StitchValidation): string {
  const checked = statements.flatMap(({ findings }) => findings ?? []);
  const by = bendsOf.map(
    (bends) => `${checked.filter((findings) => findings[bends].holds).length} by ${lawNames[bends]}`,
  );
  return `${statements.length} printed statements: ${checked.length} are checked, ${by.join(', ')} hold.`;
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
      text: `Inputs: reference-data/stitch-validation-inputs.json, each read, recalled or assumed, with its reason. ${notBlind}`,
    },
    { kind: 'heading', level: 2, text: 'At a glance', id: 'at-a-glance' },
    {
      kind: 'list',
      items: [
        ...counts(found),
        ...bendsOf.flatMap((bends) => ofLaw(found.toughness[bends], bends)),
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
