import { existsSync } from 'node:fs';
import { posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import manifest from '../../package.json' with { type: 'json' };
import { type DocPage, inRoot, pages } from './support/pages.js';

const named = pages.map((page) => [page.path, page] as const);

/** The text without its fenced blocks and code spans, in which nothing is a link. */
const prose = ({ text }: DocPage): string => text.replace(/^```[\s\S]*?^```\s*$/gm, '').replace(/`[^`\n]*`/g, '');

/** Where the links of a page lead. */
const targets = (page: DocPage): string[] =>
  [...prose(page).matchAll(/\]\(([^)\s]+)\)/g)].map(([, target = '']) => target);

/** The anchor that a heading gets: lower case, hyphens for spaces, other signs left out. */
const anchor = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\s_-]/gu, '')
    .trim()
    .replace(/\s/g, '-');

const anchors = ({ text }: DocPage): string[] =>
  [...text.replace(/^```[\s\S]*?^```\s*$/gm, '').matchAll(/^#{1,6}\s+(.*)$/gm)].map(([, heading = '']) =>
    anchor(heading),
  );

describe('every page', () => {
  it.each(named)('%s: its relative links lead to files and headings that are there', (path, page) => {
    for (const target of targets(page)) {
      if (/^[a-z]+:/i.test(target)) continue;
      const [file = '', heading] = target.split('#');
      const to = file === '' ? path : posix.normalize(posix.join(posix.dirname(path), file));
      expect(existsSync(inRoot(to)), `${path} -> ${target}`).toBe(true);
      const other = pages.find((one) => one.path === to);
      if (heading !== undefined && other !== undefined)
        expect(anchors(other), `${path} -> ${target}`).toContain(heading);
    }
  });

  it.each(named)('%s: names no path of a machine and no host of a package registry', (_, { text }) => {
    expect(text).not.toMatch(/(?<![\w.~-])\/(?:work|tmp|root|home|Users)\b/);
    expect(text).not.toMatch(/\b[A-Z]:\\/);
    expect(text).not.toMatch(/\bregistry\.\w|\bnpm.?js\b|\bnpm(?:js)?\.(?:org|com)\b/i);
  });

  it.each(named)('%s: names only scripts that the workspace has', (_, { text }) => {
    for (const [, script = ''] of text.matchAll(/\bnpm run (?:--silent )?([\w:-]+)/g)) {
      expect(Object.keys(manifest.scripts)).toContain(script);
    }
  });
});
