/** The smallest design that has a laminate, a stitch plan and a load. */
export const minimal = `format: 1
title: Minimal
materials:
  ud:
    kind: ply
    E1: 181 GPa
    E2: 10.3 GPa
    G12: 7.17 GPa
    nu12: 0.28
    thickness: 0.125 mm
    density: 1600 kg/m^3
    strengths: { Xt: 1500 MPa, Xc: 1500 MPa, Yt: 40 MPa, Yc: 246 MPa, S: 68 MPa }
    expansion: { alpha1: 0.02e-6 1/K, alpha2: 22.5e-6 1/K }
laminates:
  skin: { material: ud, stack: "[0/±45/90]s" }
threads:
  t75: { linearDensity: 75 tex, density: 1440 kg/m^3, tenacity: 1.7 N/tex, modulus: 50 N/tex }
stitching:
  rows: { thread: t75, stitchType: 301, pattern: parallel, pitch: 4 mm, rowSpacing: 5.5 mm, laminate: skin }
loads:
  pull: { laminate: skin, N: [100 kN/m, 0 N/m, 0 N/m], M: [0 N, 0 N, 0 N], temperatureChange: -100 K }
`;

/** The minimal design with one target. */
export const withTarget = (target: string): string => `${minimal}targets:\n  - ${target}\n`;
