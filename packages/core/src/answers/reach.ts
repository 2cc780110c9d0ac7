/**
 * The parts of a working in which the number of a symbol may stand, the nearest first: the part itself, what it is part of, and for a load the
 * plies of its laminate and the laminate.
 * @param laminateOf the name of the laminate of a load
 */
export function reachOf(
  laminateOf: (load: string) => string | undefined,
): (part: readonly string[]) => readonly string[] {
  const places = new Map<string, readonly string[]>();
  const upward = (part: readonly string[]): string[] =>
    part.map((_, i) => part.slice(0, part.length - i).join('.')).slice(0, -1);
  const ofLaminate = (part: readonly string[]): string[] => {
    const laminate = part[0] === 'loads' ? laminateOf(part[1] ?? '') : undefined;
    const plies = part.indexOf('plies');
    return laminate === undefined ? [] : upward(['laminates', laminate, ...(plies < 0 ? [] : part.slice(plies))]);
  };
  return (part) => {
    const key = part.join('.');
    const found = places.get(key) ?? [...upward(part), ...ofLaminate(part)];
    places.set(key, found);
    return found;
  };
}
