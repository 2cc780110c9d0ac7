/** Results of late by what they were made from, the oldest forgotten first: most inputs stay the same while a design is worked on. */
export function remembered<Input, Result>(compute: (input: Input) => Result, most: number): (input: Input) => Result {
  const known = new Map<string, Result>();
  return (input) => {
    const key = JSON.stringify(input);
    const result = known.get(key) ?? compute(input);
    known.delete(key);
    known.set(key, result);
    for (const oldest of known.keys()) {
      if (known.size <= most) break;
      known.delete(oldest);
    }
    return result;
  };
}
