import type { SearchResult } from '../../study/index.js';

/** A count in groups of three. */
export const counted = (count: number | bigint): string => count.toLocaleString('en-US').replaceAll(',', ' ');

/** So many stretches are named one by one. */
const mostNamed = 5;

/** "share 2/3 (candidates 1 425 to 2 848)". */
function stretchText({ from, to, shards = [] }: SearchResult['missing'][number]): string {
  const candidates = to - from === 1 ? `candidate ${counted(to)}` : `candidates ${counted(from + 1)} to ${counted(to)}`;
  const [first, last] = [shards[0], shards.at(-1)];
  if (first === undefined || last === undefined) return candidates;
  const name = `${first[0]}/${first[1]}`;
  return `${shards.length === 1 ? `share ${name}` : `shares ${name} to ${last[0]}/${last[1]}`} (${candidates})`;
}

/** How many of the candidates were gone through: "2 848 of 4 272 candidates gone through". */
function goneThrough({ state: { share, done = [] } }: SearchResult): string {
  const count = done.reduce((sum, { from, to }) => sum + to - from, 0);
  return `${counted(count)} of ${counted(share === undefined ? 0 : share.to - share.from)} candidates gone through`;
}

/** Of a search that goes through its candidates, the share that it is: "share 2 of 3, candidates 1 425 to 2 848". */
function shareText({ problem, state: { share, shard } }: SearchResult): string | undefined {
  if (share === undefined || BigInt(share.to - share.from) === problem.size.candidates) return undefined;
  const name = shard === undefined ? 'a share' : `share ${shard[0]} of ${shard[1]}`;
  return share.from === share.to
    ? `${name}, which has no candidates`
    : `${name}, candidates ${counted(share.from + 1)} to ${counted(share.to)}`;
}

/** How the candidates were searched, and whether all of it was done. */
export function methodText(found: SearchResult): string {
  const { problem, state, complete } = found;
  if (problem.method === 'nsga2') {
    const { population, seeds = [] } = state;
    const done = population === undefined ? '' : `, ${population.generation} generations`;
    const of = complete ? '' : ` of ${problem.generations}, not complete`;
    return `bred, generation by generation (NSGA-II), seed ${seeds.join(', ')}${done}${of}`;
  }
  const share = shareText(found);
  if (!complete) return `${share === undefined ? '' : `${share}: `}not complete, ${goneThrough(found)}`;
  return share === undefined ? 'all candidates gone through' : `only ${share}: all of these gone through`;
}

/** What is left to do, in a sentence; nothing where a search is complete. */
export function searchProgress(found: SearchResult): string | undefined {
  const { problem, state, complete, missing } = found;
  if (complete) return undefined;
  const { population } = state;
  if (population !== undefined) {
    return `The search is not complete: ${population.generation} of ${problem.generations} generations were bred.`;
  }
  const named = missing.slice(0, mostNamed).map(stretchText);
  const more = missing.length > mostNamed ? ` and ${missing.length - mostNamed} further stretches` : '';
  return `The search is not complete: ${goneThrough(found)}; missing: ${named.join(', ')}${more}.`;
}

/** What a share of a search says of itself. */
export function shareNote(found: SearchResult): string | undefined {
  const share = shareText(found);
  return share === undefined ? undefined : `This is ${share}, of the search; --merge puts shares together.`;
}
