import * as z from 'zod/mini';

type Given = string | number;

/**
 * One value or a list of values: each is read by its own schema, so that a problem of a list stands at its entry.
 * A union of the two schemas would only say that neither fits.
 */
export function oneOrList<One, Each>(
  words: string,
  one: z.ZodMiniType<One, Given>,
  each: z.ZodMiniType<Each, Given>,
  size: { readonly least: number; readonly most: number },
) {
  const given = z.union([z.string(), z.number()], { error: () => words });
  const list = z.array(given, { error: () => words }).check(z.minLength(size.least), z.maxLength(size.most));
  const input = z.union([z.string(), z.number(), list], { error: () => words }).check(z.describe(words));
  return z.pipe(
    input,
    z.transform((value, context): One | Each[] => {
      const read = <Read>(schema: z.ZodMiniType<Read, Given>, part: Given, path: PropertyKey[]): Read => {
        const result = schema.safeParse(part);
        if (result.success) return result.data;
        for (const issue of result.error.issues) {
          context.issues.push({ ...issue, input: part, path: [...path, ...issue.path] } as z.core.$ZodRawIssue);
        }
        return z.NEVER;
      };
      return Array.isArray(value) ? value.map((part, i) => read(each, part, [i])) : read(one, value, []);
    }),
  );
}
