/** A small independent reader of HTML and SVG for tests: it knows tags, attributes and which elements stand alone. */

const standAlone = new Set([
  'meta',
  'link',
  'br',
  'hr',
  'img',
  'input',
  'col',
  'wbr',
  'area',
  'base',
  'embed',
  'source',
  'track',
]);

export interface Tag {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  /** Text from the end of this tag to the next tag. */
  readonly text: string;
}

const token = /<(\/?)([a-zA-Z][\w:-]*)((?:\s+[\w:-]+(?:="[^"<]*")?)*)\s*(\/?)>/y;

/** Reads markup; throws on a stray `<`, an unquoted attribute, an ampersand that begins no entity, or tags that do not nest. */
export function readMarkup(markup: string): Tag[] {
  const tags: Tag[] = [];
  const open: string[] = [];
  let at = markup.startsWith('<!doctype html>') ? '<!doctype html>'.length : 0;
  const textUntil = (end: number): string => {
    const text = markup.slice(at, end);
    if (open.at(-1) !== 'style' && /&(?!(?:amp|lt|gt|quot|#39);)/.test(text))
      throw new Error(`bare ampersand in ${text}`);
    return text;
  };
  while (at < markup.length) {
    const next = markup.indexOf('<', at);
    if (next < 0) {
      textUntil(markup.length);
      break;
    }
    const text = textUntil(next);
    const last = tags.at(-1);
    if (last) tags[tags.length - 1] = { ...last, text };
    token.lastIndex = next;
    const match = token.exec(markup);
    if (!match) throw new Error(`not a tag: ${markup.slice(next, next + 60)}`);
    const [whole, closing, name = '', written = '', selfClosing] = match;
    at = next + whole.length;
    if (closing) {
      const expected = open.pop();
      if (expected !== name) throw new Error(`</${name}> closes <${expected}>`);
      tags.push({ name: `/${name}`, attributes: {}, text: '' });
      continue;
    }
    const attributes: Record<string, string> = {};
    for (const [, key = '', value = ''] of written.matchAll(/([\w:-]+)(?:="([^"]*)")?/g)) {
      if (key in attributes) throw new Error(`attribute ${key} twice`);
      if (/&(?!(?:amp|lt|gt|quot|#39);)/.test(value)) throw new Error(`bare ampersand in ${value}`);
      attributes[key] = value;
    }
    tags.push({ name, attributes, text: '' });
    if (!selfClosing && !standAlone.has(name)) open.push(name);
  }
  if (open.length > 0) throw new Error(`never closed: ${open.join(', ')}`);
  return tags;
}

export function idsOf(tags: readonly Tag[]): string[] {
  return tags.flatMap(({ attributes }) => (attributes.id === undefined ? [] : [attributes.id]));
}

export function named(tags: readonly Tag[], name: string, part = ''): Tag[] {
  return tags.filter((tag) => tag.name === name && (tag.attributes.class ?? '').split(' ').concat('').includes(part));
}

/** The code of the first problem an action throws. */
export function problemCode(action: () => unknown): string | undefined {
  try {
    action();
  } catch (error) {
    const { problems } = error as { problems?: readonly { code: string }[] };
    return problems?.[0]?.code ?? String(error);
  }
  return undefined;
}
