/**
 * Places for labels that want to stand at `wanted` (ascending) but need `gap` between neighbours: as near as possible to
 * what they want, in order. Labels that collide share the displacement (pool of adjacent violators).
 */
export function spreadLabels(wanted: readonly number[], gap: number): number[] {
  // In coordinates shifted by i*gap the places must only not decrease, and the nearest such places are block means.
  const blocks: { sum: number; count: number }[] = [];
  wanted.forEach((place, i) => {
    let block = { sum: place - i * gap, count: 1 };
    for (let above = blocks.at(-1); above && above.sum / above.count > block.sum / block.count; above = blocks.at(-1)) {
      block = { sum: block.sum + above.sum, count: block.count + above.count };
      blocks.pop();
    }
    blocks.push(block);
  });
  return blocks
    .flatMap((block) => new Array<number>(block.count).fill(block.sum / block.count))
    .map((v, i) => v + i * gap);
}
