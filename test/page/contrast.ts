import type { Page } from 'playwright-core';

export interface Contrast {
  readonly text: string;
  readonly ratio: number;
}

/** Runs in the page: text colour against the nearest opaque ground, by the relative luminance of WCAG 2.2. */
const measure = `(() => {
  const numbers = (colour) => (colour.match(/[\\d.]+/g) ?? []).map(Number);
  const channel = (value) => { const c = value / 255; return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4; };
  const luminance = (colour) => { const [r, g, b] = numbers(colour).map(channel); return 0.2126 * r + 0.7152 * g + 0.0722 * b; };
  const opaque = (colour) => { const [, , , a = 1] = numbers(colour); return a === 1; };
  const ground = (element) => {
    for (let at = element; at; at = at.parentElement) {
      const colour = getComputedStyle(at).backgroundColor;
      if (opaque(colour)) return colour;
    }
    return 'rgb(255, 255, 255)';
  };
  const found = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const element = node.parentElement;
    const style = getComputedStyle(element);
    if (!node.textContent.trim() || style.visibility === 'hidden' || element.closest('style, title, desc')) continue;
    const colour = element.closest('svg') ? style.fill : style.color;
    const [a, b] = [luminance(colour), luminance(ground(element))].sort((x, y) => y - x);
    found.push({ text: node.textContent.trim().slice(0, 40), ratio: (a + 0.05) / (b + 0.05) });
  }
  return found;
})()`;

/** The contrast of every piece of text on a page with what it stands on. */
export async function contrasts(page: Page): Promise<Contrast[]> {
  return (await page.evaluate(measure)) as Contrast[];
}
