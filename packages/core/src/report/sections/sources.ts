import { bibliography } from '../../material/index.js';
import { accessInWords, type SourceKey } from '../../provenance/index.js';
import type { Block } from '../blocks.js';
import { heading } from './build.js';

/** The closing list of sources, each with how it was reached; nothing when there are none. */
export function sourcesSection(keys: readonly SourceKey[]): Block[] {
  if (keys.length === 0) return [];
  const entries = keys.map((key) => {
    const entry = bibliography[key];
    return {
      key,
      text: entry?.citation ?? key,
      access: entry === undefined ? 'not stated' : accessInWords(entry.access),
    };
  });
  return [heading(2, 'Sources', 'sources'), { kind: 'sources', entries }];
}
