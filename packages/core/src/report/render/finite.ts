import { fail } from '../../problem/index.js';
import type { Block, Cell, Report } from '../blocks.js';

function checkCell(cell: Cell | undefined, where: string): void {
  if (typeof cell === 'object' && !Number.isFinite(cell.value)) {
    fail({ code: 'not-computable', message: `${where} is ${cell.value}; a report holds finite numbers only` });
  }
}

function checkBlock(block: Block): void {
  if (block.kind === 'facts') for (const { label, value } of block.items) checkCell(value, `fact \`${label}\``);
  if (block.kind === 'step') {
    for (const [symbol, value] of Object.entries(block.results))
      checkCell({ value, kind: 'number' }, `step ${block.number}, ${symbol}`);
  }
  if (block.kind !== 'table') return;
  block.rows.forEach((row, i) => {
    block.columns.forEach(({ label }, j) => {
      checkCell(row[j], `table \`${block.id}\`, row ${i + 1}, ${label}`);
    });
    if (row.length !== block.columns.length) {
      fail({
        code: 'contradiction',
        message: `table \`${block.id}\`, row ${i + 1} has ${row.length} cells under ${block.columns.length} columns`,
      });
    }
  });
}

/**
 * Checks what every printed format relies on: finite numbers, and rows as long as their head.
 *
 * @throws not-computable for a NaN or infinite number in a table or fact
 * @throws contradiction for a row with more or fewer cells than columns
 */
export function checkBlocks(report: Report): void {
  for (const block of report.blocks) checkBlock(block);
}
