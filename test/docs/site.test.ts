import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, posix } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { contentsPath, listedPages } from '../../packages/core/scripts/site/contents.js';
import { subjects } from '../../packages/core/scripts/site/subjects.js';
import { executablePath, launch, sayWhenSkipped } from '../page/browser.js';
import { inRoot, pages, root } from './support/pages.js';

sayWhenSkipped('the browser test of the documentation site');

/** Builds the site as `npm run site` does, elsewhere, and also where there are warnings; what the builder says, and its exit code. */
function build(out: string): Promise<{ readonly code: number | null; readonly said: string }> {
  const typedoc = inRoot('node_modules/typedoc/bin/typedoc');
  const settings = ['--out', out, '--logLevel', 'Warn', '--treatWarningsAsErrors', 'false'];
  const builder = spawn(process.execPath, ['--import=tsx', typedoc, ...settings], {
    cwd: inRoot('.'),
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let said = '';
  for (const stream of [builder.stdout, builder.stderr]) stream.on('data', (text) => (said += String(text)));
  return new Promise((done) => builder.on('close', (code) => done({ code, said })));
}

/** Names in the export lists of a file, types and values alike. */
async function exportedNames(path: string): Promise<string[]> {
  const text = await readFile(inRoot(path), 'utf8');
  const lists = [...text.matchAll(/^export (?:type )?\{([^}]*)\} from /gm)].map(([, list = '']) => list);
  return lists.flatMap((list) => {
    const entries = list.split(',').map((entry) => entry.trim());
    return entries.filter((entry) => entry !== '').map((entry) => entry.replace(/^type /, '').replace(/^\S+ as /, ''));
  });
}

const attributes = (html: string, name: string): string[] =>
  [...html.matchAll(new RegExp(`<[^>]*\\s${name}="([^"]*)"`, 'g'))].map(([, value = '']) => value);

const isOutside = (address: string): boolean => /^(?:[a-z][a-z0-9+.-]*:|\/)/i.test(address);

describe('the documentation site', () => {
  let folder = '';
  let built = { code: null as number | null, said: '' };
  const html = new Map<string, string>();

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'selvage-site-'));
    built = await build(folder);
    const files = (await readdir(folder, { recursive: true })).map((name) => name.replaceAll('\\', '/'));
    for (const name of files.filter((one) => one.endsWith('.html')))
      html.set(name, await readFile(join(folder, name), 'utf8'));
  }, 240_000);

  afterAll(() => rm(folder, { recursive: true, force: true }));

  it('is built without a warning', () => {
    expect(built).toEqual({ code: 0, said: '' });
  });

  it('leads by every link to a page and a place that are there', () => {
    const anchors = new Map([...html].map(([name, text]) => [name, new Set(attributes(text, 'id'))]));
    const broken: string[] = [];
    for (const [name, text] of html) {
      for (const address of [...attributes(text, 'href'), ...attributes(text, 'src')]) {
        if (isOutside(address)) continue;
        const [path = '', anchor = ''] = address.split('#').map(decodeURIComponent);
        const to = path === '' ? name : posix.normalize(posix.join(posix.dirname(name), path));
        const isThere = html.has(to) || (!to.endsWith('/') && existsSync(join(folder, to)));
        if (!isThere || (anchor !== '' && anchors.get(to)?.has(anchor) === false)) broken.push(`${name} -> ${address}`);
      }
    }
    expect(html.size).toBeGreaterThan(400);
    expect(broken).toEqual([]);
  });

  it('loads nothing from outside', async () => {
    for (const [name, text] of html) {
      const loaded = [...text.matchAll(/<(?:link|script|img|iframe|source|object|embed)\b[^>]*>/g)].map(([tag]) => tag);
      for (const tag of loaded) {
        for (const address of ['href', 'src', 'srcset', 'data'].flatMap((key) => attributes(tag, key)))
          expect(isOutside(address), `${name}: ${tag}`).toBe(false);
      }
    }
    const assets = await readdir(join(folder, 'assets'));
    for (const name of assets.filter((one) => one.endsWith('.css'))) {
      const text = await readFile(join(folder, 'assets', name), 'utf8');
      expect(text.match(/@import|url\(\s*["']?(?:https?:)?\/\//g), name).toBeNull();
    }
  });

  it('begins with the first page of the repository', () => {
    expect(html.get('index.html')).toContain('A first design in five minutes');
  });

  it('has a page for each one of docs and each design of the examples, in the section of the contents page', () => {
    const listed = listedPages(inRoot('.'));
    const paths = [contentsPath, ...listed.map(({ path }) => path)];
    const written = pages.map(({ path }) => path).filter((path) => path.startsWith('docs/'));
    expect(written.filter((path) => !paths.includes(path))).toEqual([]);
    for (const path of paths.filter((one) => !one.startsWith('packages/')))
      expect([...html.keys()]).toContain(`${path.replace(/\.md$/, '')}.html`);
    const sections = ['Guide', 'Theory', 'Reference', 'Validation', 'Examples', 'API'];
    expect([...new Set(listed.map(({ section }) => section))]).toEqual(sections);
  });

  it('lists every design of the examples', async () => {
    const designs = (await readdir(inRoot('docs/examples'))).filter((name) => name.endsWith('.yaml'));
    const listed = listedPages(inRoot('.')).map(({ path }) => path);
    expect(designs.filter((name) => !listed.includes(`docs/examples/${name}`))).toEqual([]);
  });

  it('has a page for each public name, under the subject of its folder', async () => {
    const exported = await Promise.all(
      ['packages/core/src/index.ts', 'packages/core/src/public-types.ts'].map(exportedNames),
    );
    const names = exported.flat();
    expect(names.length).toBeGreaterThan(300);
    const documented = new Set([...html.keys()].map((name) => /^\w+\/_selvage_core\.(\w+)\.html$/.exec(name)?.[1]));
    expect(names.filter((name) => !documented.has(name))).toEqual([]);
    const api = html.get('modules/_selvage_core.html') ?? '';
    for (const subject of subjects(new URL('packages/core/src/', root)).values()) expect(api).toContain(subject);
  });

  it.skipIf(executablePath === undefined)(
    'is searched in a browser without a server',
    async () => {
      const browser = await launch();
      try {
        const page = await browser.newPage({ viewport: { width: 380, height: 800 } });
        const outside: string[] = [];
        page.on('request', (request) => {
          if (!/^(?:file|data):/.test(request.url())) outside.push(request.url());
        });
        await page.goto(pathToFileURL(join(folder, 'index.html')).href);
        await page.click('#tsd-search-trigger');
        await page.fill('#tsd-search input', 'inPlaneKnockdown');
        await page.waitForSelector('#tsd-search li a');
        const found = await page.getAttribute('#tsd-search li a', 'href');
        expect(found).toContain('_selvage_core.inPlaneKnockdown.html');
        await page.goto(pathToFileURL(join(folder, 'docs/validation.html')).href);
        await page.waitForSelector('table');
        expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth')).toBe(true);
        expect(outside).toEqual([]);
      } finally {
        await browser.close();
      }
    },
    60_000,
  );
});
