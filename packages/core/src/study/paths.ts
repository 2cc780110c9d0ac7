/** A dotted path and those of the parts that it lies in, the uppermost first: `a`, `a.b`, `a.b.c`. */
export const pathsTo = (path: string): string[] => path.split('.').map((_, i, keys) => keys.slice(0, i + 1).join('.'));
