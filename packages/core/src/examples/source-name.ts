import { citation } from '../material/index.js';
import type { SourceKey } from '../provenance/index.js';

const author = /^(\p{Lu}[\p{L}'’-]+),(?:[ -]\p{Lu}\.)+(?:, | and )?/u;

/** Surnames with which a citation begins: "Tsai, S. W. and Hahn, H. T., Introduction" gives Tsai and Hahn. */
function surnames(text: string): string[] {
  const found = author.exec(text);
  return found === null ? [] : [found[1] ?? '', ...surnames(text.slice(found[0].length))];
}

/** A source in a few characters, "Tsai and Hahn 1980"; its key where its citation begins with no author. */
export function sourceName(key: SourceKey): string {
  const cited = citation(key);
  const names = surnames(cited);
  if (names.length === 0) return key;
  const last = names.length > 1 ? ` and ${names.at(-1)}` : / and others,/.test(cited) ? ' and others' : '';
  const [year] = /\d{4}$/.exec(key) ?? [''];
  return `${names.slice(0, Math.max(1, names.length - 1)).join(', ')}${last} ${year}`.trimEnd();
}
