import { actingRows, loadPlaces, type SpecimenFigureInput } from './specimen-input.js';
import { sizeOf } from './specimen-parts.js';

const columns = 61;
const bondColumns = 45;
const armLines = 5;

type Put = (line: string[]) => void;

function drawn(width: number, fill: string, put: Put = () => undefined): string {
  const line = new Array<string>(width).fill(fill);
  put(line);
  return line.join('').trimEnd();
}

function straight(input: SpecimenFigureInput): string[] {
  const { kind, length, crackLength, span = 0 } = input;
  const column = (place: number): number => Math.round((place / length) * (columns - 1));
  const rows: Put = (line) => {
    for (const place of actingRows(input)) line[column(place)] = '|';
  };
  const signs = (places: readonly number[], sign: string): string =>
    drawn(columns, ' ', (line) => {
      for (const place of places) line[column(place)] = sign;
    });
  const middle = drawn(columns, '-', (line) => {
    for (let i = 0; i < column(crackLength); i++) line[i] = ' ';
    if (kind === 'wedge') line[0] = '>';
    rows(line);
  });
  const arm = drawn(columns, '=', rows);
  const end = sizeOf(length, input);
  const above = kind === 'dcb' ? [signs([0], '^')] : kind === 'enf' ? [signs(loadPlaces(input), 'v')] : [];
  const below = kind === 'dcb' ? [signs([0], 'v')] : kind === 'enf' ? [signs([0, span], '^')] : [];
  return [...above, arm, middle, arm, ...below, `0${end.padStart(columns - 1)}`];
}

function peel(input: SpecimenFigureInput): string[] {
  const { length, crackLength } = input;
  const column = (place: number): number =>
    Math.round(((place - crackLength) / (length - crackLength)) * (bondColumns - 1));
  const rows: Put = (line) => {
    for (const place of actingRows(input)) line[column(place)] = '|';
  };
  const leg = Array.from({ length: armLines }, () => '  #');
  const arm = `  ##${drawn(bondColumns, '=', rows)}`;
  return ['  ^', ...leg, arm, `    ${drawn(bondColumns, '-', rows)}`, arm, ...leg, '  v'];
}

/** The specimen in characters, to scale along the bond. */
export function specimenText(input: SpecimenFigureInput): string {
  const rows = actingRows(input).length > 0 ? '   | row of stitches' : '';
  const loads = { dcb: '^ v loads', enf: 'v load   ^ supports', peel: '^ v loads   # free arm', wedge: '> wedge' }[
    input.kind
  ];
  return [...(input.kind === 'peel' ? peel(input) : straight(input)), `= arm   - bond${rows}   ${loads}`].join('\n');
}
