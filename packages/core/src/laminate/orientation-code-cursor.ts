const spaces = /\s*/y;

/** A place in the code that moves on as it is read. */
export interface Cursor {
  readonly code: string;
  at: number;
}

/** The text that the pattern matches at the cursor, which then stands behind it; undefined when it does not match. */
export function take(cursor: Cursor, pattern: RegExp): RegExpExecArray | undefined {
  pattern.lastIndex = cursor.at;
  const found = pattern.exec(cursor.code) ?? undefined;
  if (found) cursor.at += found[0].length;
  return found;
}

/** Moves past spaces. */
export function skip(cursor: Cursor): void {
  take(cursor, spaces);
}
