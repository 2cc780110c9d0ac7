/** What stands in the document at some names, from the top. */
function partAt(data: unknown, parts: readonly string[]): unknown {
  return parts.reduce<unknown>(
    (value, part) =>
      typeof value === 'object' && value !== null && Object.hasOwn(value, part)
        ? (value as Record<string, unknown>)[part]
        : undefined,
    data,
  );
}

const generally =
  'nothing sets it a limit here (a face in tension, a load that stresses nothing), or a value that it needs is not given; the report of this part says which';

/** The coupon's own note that tells of something. */
function noteOn(data: unknown, name: string, words: RegExp): string | undefined {
  const notes = partAt(data, ['coupons', name, 'notes']);
  if (!Array.isArray(notes)) return undefined;
  return notes.map((note) => String(partAt(note, ['text']))).find((text) => words.test(text));
}

/** Why a quantity of a coupon is null, by the name under `simulated` at which it is so; nothing for names without reasons. */
function couponReason(data: unknown, [, name = '', , first = '', second = '']: readonly string[]): string | undefined {
  const sliding = partAt(data, ['coupons', name, 'type']) === 'enf';
  const plain = partAt(data, ['coupons', name, 'stitching']) === null;
  if (first === 'toughness') {
    if (partAt(data, ['coupons', name, 'type']) === 'wedge')
      return noteOn(data, name, /^no toughness/i) ?? 'an edge that a wedge opens has no toughness; take `splitLength`';
    if (second.startsWith('steady'))
      return noteOn(data, name, /^no steady toughness/i) ?? 'the bridged zone may not fit in the stitched length';
    if (second === 'ceiling')
      return sliding ? 'it is one of opening, and this coupon slides' : 'a layer of the arms has no strengths';
  }
  if (first === 'gain')
    return plain
      ? 'it has no stitches that could gain anything'
      : 'the design has no coupon like it without stitches whose values can be compared: same type, arms, bond, crack and sizes but for the width';
  if (first === 'verdict') return 'nothing else is in reach of the load';
  if (first === 'pointOfNoReturn')
    return plain
      ? 'it has no stitches'
      : 'the arms break with far fewer of these stitches too, or at no density that can be sewn, or have no strengths';
  if (['law', 'penetrationDensity', 'discreteness', 'zone'].includes(first))
    return plain ? 'it has no stitches' : 'it takes several rows in a field of stitches, and room for a bridged zone';
  return undefined;
}

/**
 * Why a number of the document is null, for a reader who asked for it.
 * @param parts names from the top of the document to the null, or beyond it
 */
export function whyNoValue(data: unknown, parts: readonly string[]): string {
  const coupon = parts[0] === 'coupons' && parts[2] === 'simulated';
  return (coupon ? couponReason(data, parts) : undefined) ?? generally;
}

/** The median beside a number that stands for middle values of a coupon; undefined for everything else. */
export function medianBeside(data: unknown, quantity: string): number | undefined {
  const parts = quantity.split('.');
  const [section, , , ...names] = parts;
  const beside: Readonly<Record<string, readonly string[]>> = {
    peakForce: ['peakForceInterval'],
    splitLength: ['splitLengthInterval'],
    'toughness.specimen': ['toughness', 'interval'],
    'toughness.steady': ['toughness', 'steadyInterval'],
  };
  const found = section === 'coupons' && parts[2] === 'simulated' ? beside[names.join('.')] : undefined;
  const median = found && partAt(data, [...parts.slice(0, 3), ...found, 'median']);
  return typeof median === 'number' ? median : undefined;
}
