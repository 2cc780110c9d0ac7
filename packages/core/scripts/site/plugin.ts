/**
 * What the documentation site needs beyond the settings of typedoc.json: the pages that docs/README.md lists, in its order
 * and sections; the public names by subject, as the comments of src/index.ts sort them; links to folders and source files.
 */
import { existsSync, readFileSync, statSync } from 'node:fs';
import { dirname, extname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import {
  type Application,
  Comment,
  CommentTag,
  type Context,
  Converter,
  type DeclarationReflection,
  DocumentReflection,
  KindRouter,
  MinimalSourceFile,
  type NormalizedPath,
  PageEvent,
  type ProjectReflection,
  type Reflection,
  ReflectionKind,
} from 'typedoc';
import { contentsPath, type ListedPage, listedPages } from './contents.js';
import { subjects } from './subjects.js';

const root = fileURLToPath(new URL('../../../../', import.meta.url));
const source = new URL('../../src/', import.meta.url);
const sourceFolder = fileURLToPath(source);

/** Languages of the files that are shown as they are. */
const languages: Readonly<Record<string, string>> = { '.yaml': 'yaml', '.mjs': 'js', '.html': 'html', '.json': 'json' };

/** TypeDoc shows a group of this name without a heading, before the others. */
const withoutHeading = 'none';

const normal = (path: string): NormalizedPath => path.replaceAll('\\', '/') as NormalizedPath;

/** A page of the site from a file of the repository: Markdown as it reads, anything else as a block of code. */
function addPage({ converter }: Application, project: ProjectReflection, { path, title, section }: ListedPage): void {
  const file = normal(join(root, path));
  const text = readFileSync(file, 'utf8');
  const code = `\`\`\`${languages[extname(path)] ?? 'text'}\n${text.trimEnd()}\n\`\`\``;
  const shown = extname(path) === '.md' ? text : `# ${title}\n\n\`${path}\`\n\n${code}\n`;
  const { content } = converter.parseRawComment(new MinimalSourceFile(shown, file), project.files);
  const page = new DocumentReflection(title, project, content, { group: section });
  project.addChild(page);
  project.registerReflection(page, undefined, file);
}

function addPages(app: Application, { project }: Context): void {
  addPage(app, project, { path: contentsPath, title: 'Contents', section: withoutHeading });
  for (const page of listedPages(root)) {
    if (!resolve(root, page.path).startsWith(resolve(sourceFolder))) addPage(app, project, page);
  }
}

/** Sources are named, not linked to a server; what the subjects were put in must not pass for a docstring. */
function tidy({ project }: Context): void {
  for (const reflection of Object.values(project.reflections)) {
    reflection.comment?.removeTags('@category');
    if (reflection.comment?.hasVisibleComponent() === false) delete reflection.comment;
    if (reflection.isDeclaration() || reflection.isSignature()) {
      for (const place of reflection.sources ?? []) delete place.url;
    }
  }
}

const tag = (name: `@${string}`, text: string): CommentTag => new CommentTag(name, [{ kind: 'text', text }]);

function addTag(reflection: Reflection, name: `@${string}`, text: string): void {
  reflection.comment ??= new Comment();
  reflection.comment.blockTags.push(tag(name, text));
}

/** Sorts a public name under the subject of the folder that it is declared in. */
function addSubject(reflection: DeclarationReflection, folders: ReadonlyMap<string, string>): void {
  const file = reflection.sources?.[0]?.fullFileName ?? '';
  const folder = file.slice(sourceFolder.length).split('/')[0] ?? '';
  const subject = folders.get(folder);
  if (subject === undefined) throw new Error(`no comment in src/index.ts says of what subject ./${folder} is`);
  const signatures = reflection.signatures ?? [];
  for (const one of signatures.length > 0 ? signatures : [reflection]) addTag(one, '@category', subject);
}

/** Where a link to a folder or a source file leads: sources to the API, a folder to the page that lists what is in it. */
function placeFor(path: string, api: Reflection, pages: ReadonlyMap<string, Reflection>): Reflection | undefined {
  if (`${path}/`.startsWith(sourceFolder)) return api;
  if (!statSync(path).isDirectory()) return undefined;
  const listing = join(path, 'README.md');
  return existsSync(listing) ? pages.get(listing) : placeFor(dirname(path), api, pages);
}

function sortAndLink({ project }: Context): void {
  const api = project.children?.find(({ kind }) => kind === ReflectionKind.Module);
  if (api === undefined) throw new Error('the module of the public names is not there');
  addTag(api, '@group', 'API');
  const folders = subjects(source);
  for (const child of api.children ?? []) addSubject(child, folders);
  const pages = new Map<string, Reflection>([[join(root, 'README.md'), project]]);
  for (const page of project.documents ?? []) pages.set(project.files.getReflectionPath(page) ?? '', page);
  for (const [file, page] of pages) project.files.registerReflectionPath(normal(file), page);
  for (const path of project.files.getMediaPaths()) {
    const place = existsSync(path) ? placeFor(path, api, pages) : undefined;
    if (place !== undefined) project.files.registerReflectionPath(normal(path), place);
  }
}

/** A page keeps the place of its file in the repository. */
class PlacesOfFiles extends KindRouter {
  protected override getIdealBaseName(reflection: Reflection): string {
    const file = reflection.isDocument() ? reflection.project.files.getReflectionPath(reflection) : undefined;
    return file === undefined ? super.getIdealBaseName(reflection) : normal(relative(root, file)).replace(/\.md$/, '');
  }
}

/** A link to the front page names its file, since nothing else finds it where there is no server; wide tables get a box to scroll in. */
function finish(page: PageEvent): void {
  page.contents = (page.contents ?? '')
    .replace(/href="((?:\.\.\/)+|\.\/)(#[^"]*)?"/g, 'href="$1index.html$2"')
    .replace(/<table>/g, '<div class="wide"><table>')
    .replace(/<\/table>/g, '</table></div>');
}

export function load(app: Application): void {
  app.renderer.defineRouter('places-of-files', PlacesOfFiles);
  app.converter.on(Converter.EVENT_BEGIN, (context) => addPages(app, context));
  app.converter.on(Converter.EVENT_RESOLVE_BEGIN, sortAndLink);
  app.converter.on(Converter.EVENT_END, tidy);
  app.renderer.on(PageEvent.END, finish);
}
