/** Invented designs with something to be found. */

const head = `format: 1
title: Skin to be found
materials:
  ud:
    kind: ply
    E1: 40 GPa
    E2: 9 GPa
    G12: 4 GPa
    nu12: 0.28
    thickness: 0.25 mm
    density: 1900 kg/m^3
    strengths: { Xt: 900 MPa, Xc: 600 MPa, Yt: 45 MPa, Yc: 140 MPa, S: 65 MPa }
    expansion: { alpha1: 7e-6 1/K, alpha2: 28e-6 1/K }
  stiff:
    kind: ply
    E1: 130 GPa
    E2: 8.5 GPa
    G12: 4.5 GPa
    nu12: 0.3
    thickness: 0.2 mm
    density: 1550 kg/m^3
    strengths: { Xt: 1800 MPa, Xc: 1100 MPa, Yt: 50 MPa, Yc: 170 MPa, S: 80 MPa }
    expansion: { alpha1: 0.2e-6 1/K, alpha2: 30e-6 1/K }
laminates:
  skin: { material: ud, letters: { c: stiff }, stack: "[0/90]s" }   # the beginning
  other: { material: ud, stack: "[0/45/-45/90]s" }
threads:
  t75: { linearDensity: 75 tex, density: 1440 kg/m^3, tenacity: 1.7 N/tex, modulus: 50 N/tex }
stitching:
  rows: { thread: t75, stitchType: 301, pattern: parallel, pitch: 4 mm, rowSpacing: 5.5 mm, laminate: skin }
loads:
  pull: { laminate: skin, N: [60 kN/m, 10 kN/m, 5 kN/m], M: [4 N, 1 N, 0 N], temperatureChange: -60 K }
  bend: { laminate: skin, M: [12 N, 2 N, 1 N] }
targets:
  - { quantity: loads.pull.failure.tsaiWu.ratio, atLeast: 1.05 }
`;

/** A design with a search section, written as indented YAML. */
export const withSearch = (search: string): string => `${head}search:\n${search}`;

/** Several aims, rules and limits on a small symmetric stack. */
export const severalAims = withSearch(`  stack:
    laminate: skin
    materials: [ud, stiff]
    angles: [0, 45, -45, 90]
    plies: [2, 3]
    symmetric: true
    balanced: true
    grouping: 2
  minimise: [laminates.skin.arealMass]
  maximise: [laminates.skin.flexural.Ex, laminates.skin.inPlane.Gxy]
  constraints:
    - { quantity: laminates.skin.inPlane.Ey, atLeast: 12 GPa }
`);

/** One aim on the order of plies. */
export const oneAim =
  withSearch(`  stack: { laminate: skin, angles: [0, 45, -45, 90], plies: 4, symmetric: true, angleJump: 45 }
  maximise: [loads.bend.failure.hashin.ratio]
  keep: 5
`);

/** Stitching by `vary` beside a stack. */
export const stitched = withSearch(`  vary:
    stitching.rows.pitch: [3 mm, 4 mm, 0.4 cm, 5 mm]
    stitching.rows.rowSpacing: [4 mm, 6 mm]
  stack: { laminate: skin, angles: [0, 90], plies: [2, 3], symmetric: true }
  minimise: [laminates.skin.arealMass, stitching.rows.threadMassPerArea]
  maximise: [stitching.rows.penetrationDensity]
`);
