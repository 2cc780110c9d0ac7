import type { UnitSystem } from '../../quantity/index.js';
import type { Block, Report } from '../blocks.js';
import { escapeMarkup as e } from '../figures/index.js';
import { blockHtml, type HtmlPage } from './html-blocks.js';
import { pageStyle } from './html-style.js';

const policy = "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'";

type Heading = Extract<Block, { kind: 'heading' }>;

/** The blocks under one heading of level 2; the first section may have none. */
interface Section {
  readonly heading?: Heading;
  readonly blocks: readonly Block[];
}

function sectionsOf(blocks: readonly Block[]): Section[] {
  const sections: { heading?: Heading; blocks: Block[] }[] = [{ blocks: [] }];
  for (const block of blocks) {
    if (block.kind === 'heading' && block.level === 2) sections.push({ heading: block, blocks: [block] });
    else sections.at(-1)?.blocks.push(block);
  }
  return sections.filter((section) => section.blocks.length > 0);
}

/** Figures and tables are numbered apart, in order. */
function numbersOf(blocks: readonly Block[]): Map<string, number> {
  const numbers = new Map<string, number>();
  const counts = { figure: 0, table: 0 };
  for (const block of blocks) {
    if (block.kind !== 'figure' && block.kind !== 'table') continue;
    counts[block.kind] += 1;
    numbers.set(`${block.kind}-${e(block.id)}`, counts[block.kind]);
  }
  return numbers;
}

function contents(sections: readonly Section[]): string {
  const entries = sections.flatMap(({ heading }) =>
    heading ? [`<li><a href="#${e(heading.id)}">${e(heading.text)}</a></li>`] : [],
  );
  return entries.length < 2 ? '' : `<nav aria-label="Contents">\n<ol>\n${entries.join('\n')}\n</ol>\n</nav>\n`;
}

/** Without a script: the page shows its formulas as mathematics, or as text to copy. */
const plainSwitch =
  '<p class="switch"><label><input type="checkbox" id="plain-formulas"> Formulas as text, to copy</label></p>\n';

function sectionHtml({ heading, blocks }: Section, page: HtmlPage): string {
  const content = blocks.map((block) => blockHtml(block, page)).filter((html) => html !== '');
  const open = heading
    ? `<section aria-labelledby="${e(heading.id)}">`
    : '<section class="opening" aria-label="Overview">';
  return [open, ...content, '</section>'].join('\n');
}

/**
 * The report as one HTML file that needs nothing else and asks nothing of a network: styles and drawings inside, light and
 * dark by the reader's setting, always light on A4 paper. It runs no script and its policy forbids any.
 */
export function renderHtml(report: Report, units: UnitSystem): string {
  const sections = sectionsOf(report.blocks);
  const page: HtmlPage = {
    units,
    numbers: numbersOf(report.blocks),
    listedSources: new Set(
      report.blocks.flatMap((block) => (block.kind === 'sources' ? block.entries.map(({ key }) => key) : [])),
    ),
  };
  const subtitle = report.subtitle === undefined ? '' : `\n<p class="subtitle">${e(report.subtitle)}</p>`;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${e(report.title)}</title>
<style>${pageStyle(report.title)}</style>
</head>
<body>
<a class="skip" href="#report">Skip to the report</a>
<header>
<h1>${e(report.title)}</h1>${subtitle}
</header>
${contents(sections)}<main id="report" tabindex="-1">
${report.blocks.some(({ kind }) => kind === 'step') ? plainSwitch : ''}${sections.map((section) => sectionHtml(section, page)).join('\n')}
</main>
</body>
</html>
`;
}
