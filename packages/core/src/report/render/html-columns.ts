/** A text that stands in a column of numbers and is longer than this is words, which may be broken. */
export const shortText = 22;

/** A table of no more rows is kept on one sheet of paper. */
const wholeTable = 24;

/** Characters beside each other that a sheet of paper holds as it is set, and set closer. */
const usualWidth = 84;
const closeWidth = 108;

/** Between two columns. */
const gap = 2;

const words = (text: string): string[] => text.split(/[\s-]|\.(?=[A-Za-z])/);
const longest = (texts: readonly string[]): number => Math.max(0, ...texts.map((text) => [...text].length));

interface PrintedColumn {
  readonly head: string;
  readonly texts: readonly string[];
  readonly numeric: boolean;
}

/** Characters that columns need beside each other when words are broken wherever they can be; numbers with their unit only if `close`. */
function leastWidth(columns: readonly PrintedColumn[], close: boolean): number {
  return columns.reduce((sum, { head, texts, numeric }) => {
    const parts = texts.flatMap((text) => (numeric && !close && text.length <= shortText ? [text] : words(text)));
    return sum + Math.max(longest(words(head)), longest(parts)) + gap;
  }, 0);
}

/** Classes that fit a table to a sheet of paper: `long` may be cut by its end, `broad` is set closer, `broadest` closer still. */
export function paperClasses(columns: readonly PrintedColumn[]): string {
  const rows = columns[0]?.texts.length ?? 0;
  return [
    'table',
    ...(rows > wholeTable ? ['long'] : []),
    ...(leastWidth(columns, false) > usualWidth ? ['broad'] : []),
    ...(leastWidth(columns, true) > closeWidth ? ['broadest'] : []),
  ].join(' ');
}
