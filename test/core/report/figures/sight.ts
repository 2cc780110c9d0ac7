/** How colours are seen: light of sRGB, contrast, colour blindness and distance, each by its published formula. */

type Three = readonly [number, number, number];
type Matrix = readonly [Three, Three, Three];

const linear = (channel: number): number => (channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4);

/** The light of a colour written as #rrggbb or #rgb, linear sRGB, 0 to 1 (IEC 61966-2-1). */
export function lightOf(hex: string): Three {
  const digits = hex.length === 4 ? [...hex.slice(1)].map((digit) => digit + digit) : (hex.slice(1).match(/../g) ?? []);
  const [r = 0, g = 0, b = 0] = digits.map((pair) => linear(Number.parseInt(pair, 16) / 255));
  return [r, g, b];
}

const luminance = ([r, g, b]: Three): number => 0.2126 * r + 0.7152 * g + 0.0722 * b;

/** Contrast ratio of two colours, 1 to 21 (WCAG 2.2, relative luminance). */
export function contrast(one: string, other: string): number {
  const [light = 0, dark = 0] = [one, other].map((hex) => luminance(lightOf(hex))).sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}

/**
 * Total colour blindness of each kind as a matrix on linear sRGB: Machado, Oliveira & Fernandes, A physiologically-based model
 * for simulation of color vision deficiency, IEEE Transactions on Visualization and Computer Graphics 15(6), 2009, severity 1.
 * Recalled, and compared with copies in public sources; not re-read in the paper.
 */
export const deficiencies = {
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
} as const satisfies Readonly<Record<string, Matrix>>;

const times = (matrix: Matrix, [a, b, c]: Three): Three => {
  const [first, second, third] = matrix.map((row) => row[0] * a + row[1] * b + row[2] * c);
  return [first ?? 0, second ?? 0, third ?? 0];
};

const clipped = (light: Three): Three => {
  const [r = 0, g = 0, b = 0] = light.map((value) => Math.min(1, Math.max(0, value)));
  return [r, g, b];
};

/** A way of seeing, by its name. */
export const sights: Readonly<Record<string, (light: Three) => Three>> = {
  'usual sight': (light) => light,
  ...Object.fromEntries(
    Object.entries(deficiencies).map(([name, matrix]) => [name, (light: Three) => clipped(times(matrix, light))]),
  ),
};

/** Print in grey: as light as the colour, without its hue. */
export const greyOf = (light: Three): Three => [luminance(light), luminance(light), luminance(light)];

/** OKLab of linear sRGB: lightness 0 to 1, then green to red and blue to yellow (Ottosson, A perceptual color space for image processing, 2020; recalled). */
export function oklab(light: Three): Three {
  const cones = times(
    [
      [0.4122214708, 0.5363325363, 0.0514459929],
      [0.2119034982, 0.6806995451, 0.1073969566],
      [0.0883024619, 0.2817188376, 0.6299787005],
    ],
    light,
  );
  return times(
    [
      [0.2104542553, 0.793617785, -0.0040720468],
      [1.9779984951, -2.428592205, 0.4505937099],
      [0.0259040371, 0.7827717662, -0.808675766],
    ],
    [Math.cbrt(cones[0]), Math.cbrt(cones[1]), Math.cbrt(cones[2])],
  );
}

/** How far two lights look apart: their distance in OKLab; about 0.02 is the least that is seen side by side. */
export function apart(one: Three, other: Three): number {
  const [a, b] = [oklab(one), oklab(other)];
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}
