/** Invented designs for tests of studies. */
export const plate = `# a comment that stays
format: 1
title: Plate
materials:
  cloth:
    kind: fabric
    from: e-glass-twill-300
    resin: epoxy-infusion
    fibreVolumeFraction: 50 %   # as laid up
threads:
  thread: { linearDensity: 75 tex, density: 1440 kg/m^3 }
laminates:
  plate: { material: cloth, stack: "[0_4]s" }
stitching:
  rows: { laminate: plate, thread: thread, stitchType: 301, pattern: parallel, pitch: 4 mm, rowSpacing: 5 mm }
targets:
  - { quantity: laminates.plate.thickness, atMost: 2 mm }
`;
