import { sheet, sheetOf } from '../blister-kinds.js';
import { isotropicEntry } from './materials.js';
import { at, type DesignParts, digits, type Entry, inUnit } from './parts.js';

const ours = ['Material and size: the constants are those of any isotropic film that is thin beside what it lies on.'];

/** A film, one sheet, on nine more of them. */
const film = (blister: Entry): Pick<DesignParts, 'materials' | 'laminates'> => ({
  materials: { sheet: isotropicEntry(sheet.E, sheet.nu, inUnit(sheet.thickness, 'mm')) },
  laminates: { sheets: { material: 'sheet', stack: '[0_10]', blister: { ...blister, interface: 9 } } },
});

const blister = 'laminates.sheets.blister';

export const clampedCircleDesign = (): DesignParts => {
  const [, D] = sheetOf();
  const { radius, strain } = sheet;
  const percent = `${digits(100 * strain)} %`;
  return {
    ours,
    ...film({ shape: 'circle', length: inUnit(2 * radius, 'mm'), strain: [percent, percent, 0] }),
    held: { k: at(`${blister}.criticalN.0`, -(radius ** 2) / D) },
  };
};

export const stripBlisterDesign = (): DesignParts => {
  const [, D] = sheetOf();
  const { length, thickness } = sheet;
  return {
    ours,
    ...film({ shape: 'strip', length: inUnit(length, 'mm') }),
    held: {
      kN: at(`${blister}.criticalN`, -(length ** 2) / D),
      kStrain: at(`${blister}.criticalStrain`, -((length / thickness) ** 2)),
    },
  };
};
