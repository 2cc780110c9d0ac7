import { colour, dyes } from './palette.js';
import { dashes } from './series.js';
import { lettering, strokes, tint } from './sizes.js';

const stroke = (name: keyof typeof strokes): string => `stroke-width:${strokes[name]}`;

const dyed = dyes
  .map(
    (dye) => `.sv-${dye}{fill:none;stroke:${colour(dye)}}\n.sv-tint-${dye}{fill:${colour(dye)};fill-opacity:${tint}}`,
  )
  .join('\n');

const dashed = Object.entries(dashes)
  .map(([name, lengths]) => `.sv-${name}{stroke-dasharray:${lengths}}`)
  .join('\n');

/** Classes of every drawing. Later ones win: a fill after a dye fills what the dye outlines. */
export const figureStyle = `
.sv-figure{display:block;width:100%;height:auto;font-family:system-ui,sans-serif;font-variant-numeric:tabular-nums}
.sv-text{font-size:${lettering}px;fill:${colour('ink')}}
.sv-strong{font-weight:600}
.sv-muted{fill:${colour('muted')}}
.sv-halo{paint-order:stroke;stroke:${colour('paper')};${stroke('halo')};stroke-linejoin:round}
.sv-hair,.sv-axis,.sv-ink,.sv-outline{fill:none}
.sv-hair{stroke:${colour('hair')};${stroke('hair')}}
.sv-axis{stroke:${colour('muted')};${stroke('hair')}}
.sv-ink{stroke:${colour('ink')};${stroke('line')}}
.sv-outline{stroke:${colour('ink')};${stroke('hair')}}
${dyed}
.sv-thin{${stroke('hair')}}
.sv-sign{${stroke('sign')}}
.sv-thick{${stroke('series')};stroke-linejoin:round;stroke-linecap:round}
${dashed}
.sv-cloth{fill:${colour('cloth')}}
.sv-paper{fill:${colour('paper')}}
.sv-solid{fill:${colour('ink')}}
.sv-hole{fill:${colour('paper')};stroke:${colour('ink')};${stroke('hair')}}
.sv-ring{${stroke('sign')}}
.sv-edge{stroke:${colour('ink')};${stroke('edge')}}
.sv-gap{stroke:${colour('paper')};${stroke('gap')}}
.sv-dot,.sv-tip{fill:${colour('muted')}}
`;
