import { readFileSync } from 'node:fs';

const doors = /^\/\/ (?<subject>.+)\nexport (?:type )?\{[^}]*\} from '\.\/(?<folder>[\w-]+)\/index\.js';/gm;

/**
 * The subject of each folder of the core: the comment above its exports in src/index.ts, else in src/public-types.ts (up
 * to a colon there, behind which that file says why). The order is that of the files.
 */
export function subjects(source: URL): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  const exported = readFileSync(new URL('index.ts', source), 'utf8');
  const types = readFileSync(new URL('public-types.ts', source), 'utf8').replace(/^(\/\/ [^:\n]+):.*$/gm, '$1');
  for (const text of [exported, types]) {
    for (const { groups } of text.matchAll(doors)) {
      if (groups?.folder !== undefined && groups.subject !== undefined && !found.has(groups.folder)) {
        found.set(groups.folder, groups.subject);
      }
    }
  }
  return found;
}
