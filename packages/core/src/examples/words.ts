/** A number in the style of a printed one, with two more digits: 181811138844 like "181.8e9" is "181.811e9". */
export function likePrinted(value: number, printed: string): string {
  const [mantissa = '', exponent] = printed.toLowerCase().split('e');
  const decimals = (mantissa.split('.')[1]?.length ?? 0) + 2;
  const digits = (value / 10 ** Number(exponent ?? 0)).toFixed(decimals);
  return exponent === undefined ? digits : `${digits}e${exponent}`;
}

/** The inputs of an example on one line: "ply: E1 181 GPa, E2 10.3 GPa; angles: 0, 30, -45; plyThickness: 5 mm". */
export function inputsInWords(inputs: Readonly<Record<string, unknown>>): string {
  const given = Object.entries(inputs);
  if (given.length === 0) return 'none, the value is a constant of the theory';
  return given.map(([name, value]) => `${name}: ${inWords(value)}`).join('; ');
}

function inWords(value: unknown): string {
  if (typeof value !== 'object' || value === null) return String(value);
  if (Array.isArray(value)) return value.map(inWords).join(', ');
  return Object.entries(value)
    .map(([name, item]) => `${name} ${inWords(item)}`)
    .join(', ');
}
