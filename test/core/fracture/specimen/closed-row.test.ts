import { describe, expect, it } from 'vitest';
import { simulateDcb } from '../../../../packages/core/src/fracture/index.js';
import { armOf, expectNear, mm } from './support.js';

/** Three rows behind the tip that break at one opening and then hold nothing; the first to bear keeps the second shut. */
const firm = 0.045 * mm;
const arm = armOf({ h: 1.5 * mm, E: 60e9, G: 4e9, E3: 9e9 });
const places = [12.4, 20.6, 27.5].map((place) => place * mm);
const pulled = (from: number, displacement: number) =>
  simulateDcb({
    arms: [arm, arm],
    width: 20 * mm,
    length: 110 * mm,
    crackLength: 30 * mm,
    bondToughness: 900,
    until: { displacement },
    rows: places.slice(from).map((position, i) => ({
      position,
      penetrations: [0.84, 2.2, 1.3].slice(from)[i]!,
      curve: { opening: [0, firm, firm, 0.055 * mm], force: [0, 50, 0, 0] },
      failure: 'threadAtCrack' as const,
    })),
  });

describe('a row that is shut while the one before it bears', () => {
  it('takes over when that breaks, and breaks where it would without it', () => {
    const { events, energyError } = pulled(0, 4 * mm);
    const alone = pulled(1, 4 * mm).events[0]!;
    expect(events.map(({ row }) => row)).toEqual([0, 1, 2]);
    expect(events[0]!.displacement).toBeLessThan(0.5 * alone.displacement);
    expectNear(events[1]!.displacement, alone.displacement, 2e-4);
    expect(energyError).toBeLessThan(1e-3);
  });
});
