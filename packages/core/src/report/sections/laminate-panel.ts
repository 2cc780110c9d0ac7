import type { LaminateResult, PanelResult } from '../../design/index.js';
import type { BucklingLoad } from '../../laminate/index.js';
import { formatNumber, formatQuantity, type UnitSystem } from '../../quantity/index.js';
import type { Block, Cell } from '../blocks.js';
import { amount, heading, listOf, table } from './build.js';
import { furtherNotes } from './further-notes.js';

type Fact = { readonly label: string; readonly value: Cell; readonly remark?: string };

const waves = ({ m, n }: BucklingLoad): string =>
  m === undefined || n === undefined
    ? 'crimping: waves as short as shear allows'
    : `${m} by ${n} half ${m === 1 && n === 1 ? 'wave' : 'waves'}, along x and along y`;

function bucklingFacts({ buckling }: PanelResult): Fact[] {
  if (buckling === undefined) return [];
  const { thin, withShear } = buckling;
  const force = (label: string, value: number): Fact[] =>
    value === 0 ? [] : [{ label, value: amount(0 - value, 'forcePerLength'), remark: 'compression positive' }];
  return [
    {
      label: 'Buckles at',
      value: amount(withShear.multiplier, 'number'),
      remark: `times the given compression; ${waves(withShear)}`,
    },
    ...force('Compression along x there', withShear.Nx),
    ...force('Compression along y there', withShear.Ny),
    {
      label: 'As a thin plate',
      value: amount(thin.multiplier, 'number'),
      remark: `times, without shear; ${waves(thin)}`,
    },
  ];
}

function deflectionFacts({ deflection, entry: { pressure } }: PanelResult): Fact[] {
  if (deflection === undefined || pressure === undefined) return [];
  return [
    { label: 'Pressure', value: amount(pressure, 'pressure') },
    { label: 'Deflection at the centre', value: amount(deflection.withShear, 'length') },
    { label: 'of it without shear', value: amount(deflection.thin, 'length') },
  ];
}

function modesTable({ vibration }: PanelResult, id: string): Block[] {
  if (vibration === undefined) return [];
  const rows = vibration.modes.map(({ m, n, thin, withShear }): Cell[] => [
    String(m),
    String(n),
    amount(withShear, 'frequency'),
    amount(thin, 'frequency'),
  ]);
  return [
    table(
      `${id}-modes`,
      'Lowest natural frequencies, with the half waves along x and along y',
      [
        { label: 'm' },
        { label: 'n' },
        { label: 'Frequency', kind: 'frequency' },
        { label: 'As a thin plate', kind: 'frequency' },
      ],
      rows,
    ),
  ];
}

/** A panel of a laminate; absent when the design does not ask for it. */
export function laminatePanel(result: LaminateResult, id: string, units: UnitSystem): Block[] {
  const { panel, model } = result;
  if (panel === undefined) return [];
  const { entry, buckling, vibration } = panel;
  const panelId = `${id}--panel`;
  const size = (value: number): string => formatQuantity(value, 'length', { units });
  const bare = model.laminate.plies.find((ply) => ply.density === undefined);
  const facts = [...bucklingFacts(panel), ...deflectionFacts(panel)];
  return [
    heading(3, `Panel ${size(entry.length)} by ${size(entry.width)}`, panelId),
    ...listOf([
      'simply supported on all four sides; clamped or free sides and shear forces are not covered',
      ...(buckling !== undefined && buckling.withShear.multiplier < 1
        ? [`THE PANEL BUCKLES UNDER THE GIVEN COMPRESSION, at ${formatNumber(buckling.withShear.multiplier, 3)} of it`]
        : []),
      ...(vibration === undefined ? [`no natural frequencies: layer ${bare?.name ?? ''} has no density`] : []),
    ]),
    ...(facts.length === 0 ? [] : [{ kind: 'facts' as const, items: facts }]),
    ...modesTable(panel, panelId),
    furtherNotes(panel.notes, result.notes),
  ];
}
