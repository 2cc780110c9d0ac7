/** The design that a new user starts from: commented, complete, computed as it stands. */
export const starterDesign = `# A first design. Check it with:   selvage check design.yaml
# and read its report with:         selvage report design.yaml
# Every quantity carries its unit: "0.25 mm", "5.7 oz/yd^2", "1200 denier".
format: 1
title: My first stitched edge
notes: Starter design with library values; replace them by your own before you build.

materials:
  # A dry fabric becomes plies with resin. Fibres and resins come from the library (selvage data fibres)
  # or are declared here with kind: fibre and kind: resin.
  cloth:
    kind: fabric
    architecture: woven        # ud, woven, multiaxial or mat
    weave: twill               # plain, twill or satin: decides the crimp factor unless you give one
    fibre: e-glass
    resin: epoxy-infusion
    arealMass: 300 g/m^2
    fibreVolumeFraction: 50 %  # a bag reaches about 48 to 56 % by infusion
  biax:
    kind: fabric
    architecture: multiaxial
    fibre: e-glass
    resin: epoxy-infusion
    layers:                    # from the lower face up
      - { angle: 45, arealMass: 200 g/m^2 }
      - { angle: -45, arealMass: 200 g/m^2 }
    fibreVolumeFraction: 50 %

threads:
  aramid:
    linearDensity: 75 tex
    density: 1440 kg/m^3
    tenacity: 1.7 N/tex

laminates:
  edge:
    # Orientation code, from the tool side; the letters stand for materials. s mirrors the stack.
    letters: { c: cloth, b: biax }
    stack: "[0c/0b/0c/0b/0c]s"

stitching:
  rows:
    laminate: edge
    thread: aramid
    stitchType: 301            # lockstitch of ISO 4915
    pattern: edgeRows          # parallel, staggered, zigzag, crossing or edgeRows
    pitch: 4 mm
    rows:
      - { offset: 6 mm, length: 1100 mm }
      - { offset: 11 mm, length: 1084 mm, stagger: 2 mm }
    dryFibreVolumeFraction: 40 %

loads:
  bending: { laminate: edge, M: [40 N, 0 N, 0 N] }

targets:
  - { quantity: laminates.edge.thickness, atMost: 2.9 mm }
`;
