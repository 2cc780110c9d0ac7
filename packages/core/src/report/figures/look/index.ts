export { type ColourName, colour, colourNames, customProperties, type Dye, dyes, palette, printed } from './palette.js';
export { fibreDye, threadLook } from './plies.js';
export { barLook, dashes, mostSeries, seriesLine, seriesLook } from './series.js';
export { hatchSpacing, leastLettering, lettering, strokes, widest } from './sizes.js';
export { figureStyle } from './style.js';
