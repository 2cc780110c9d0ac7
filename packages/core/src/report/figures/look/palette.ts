/** A colour on paper by day, and on the dark ground of a screen at night. */
interface Shade {
  readonly light: string;
  readonly dark: string;
}

/**
 * Grounds and ink, and the six dyes of thread. The dyes were chosen by computation: within a band of hue, lightness and
 * strength for each, the set whose least distance in OKLab is greatest, for usual sight and with protanopia, deuteranopia or
 * tritanopia, and as far apart as that allows in grey; each with a contrast of 3 or more on both grounds, the first two of
 * 4.5, since they also colour words.
 *
 * @source Machado, Oliveira & Fernandes 2009 (sight), Ottosson 2020 (OKLab), WCAG 2.2 (contrast)
 */
export const palette = {
  paper: { light: '#fcfcfa', dark: '#14171e' },
  cloth: { light: '#f2f2ed', dark: '#1d222c' },
  ink: { light: '#1c2230', dark: '#e2e4e9' },
  muted: { light: '#59606d', dark: '#a3aab7' },
  hair: { light: '#d3d6dc', dark: '#363d4a' },
  indigo: { light: '#26326b', dark: '#6a9cef' },
  madder: { light: '#892d21', dark: '#d46a69' },
  weld: { light: '#948c1d', dark: '#d0ab15' },
  verdigris: { light: '#49817d', dark: '#a3cab4' },
  heather: { light: '#803fab', dark: '#8a5aaa' },
  walnut: { light: '#2f0b00', dark: '#f9f1e3' },
} as const satisfies Readonly<Record<string, Shade>>;

export type ColourName = keyof typeof palette;

export const colourNames = Object.keys(palette) as readonly ColourName[];

/** The dyes that tell series apart, in their order. */
export const dyes = [
  'indigo',
  'madder',
  'verdigris',
  'heather',
  'weld',
  'walnut',
] as const satisfies readonly ColourName[];

export type Dye = (typeof dyes)[number];

/** White paper for a printer: the grounds of the screen would be printed as a grey film. */
export const printed = { paper: '#fff', cloth: '#f4f4f0' } as const satisfies Partial<Record<ColourName, string>>;

/** A colour as a custom property of the page; on its own the drawing stands on white. */
export const colour = (name: ColourName): string => `var(--sv-${name},${palette[name].light})`;

/** What the page says once for all its drawings. */
export const customProperties = (theme: keyof Shade): string =>
  colourNames.map((name) => `--sv-${name}:${palette[name][theme]}`).join(';');
