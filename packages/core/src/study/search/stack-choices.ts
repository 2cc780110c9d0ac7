import type { DesignInputs, SearchEntry } from '../../design/index.js';
import { parseOrientationCode } from '../../laminate/index.js';
import { fibreAngle } from '../../numeric/index.js';
import { fail, nearestHint, type Path } from '../../problem/index.js';

/** The `stack` of a search. */
export type StackEntryOfSearch = NonNullable<SearchEntry['stack']>;

/** One of the plies that a stack may be made of. */
export interface StackChoice {
  readonly material: string;
  /** degrees, above -90 to 90: a ply is the same after half a turn. */
  readonly angle: number;
  /** How the ply is written in an orientation code of the laminate. */
  readonly code: string;
  /** How often the search names it. */
  readonly weight: number;
  /** Where it is named first. */
  readonly path: Path;
}

const at = ['search', 'stack'] as const;

/** Angles and materials as they are listed, with their places. */
function listed({ choices, materials, angles }: StackEntryOfSearch, material: string | undefined) {
  const ways = [choices, materials ?? angles].filter((one) => one !== undefined);
  if (ways.length !== 1 || (materials !== undefined && angles === undefined)) {
    fail({
      code: ways.length > 1 ? 'contradiction' : 'missing-key',
      message:
        ways.length > 1
          ? 'the plies to choose from are given twice'
          : 'the stack of the search does not say what its plies can be',
      allowed: '`choices`, or `angles`, or `materials` with `angles`',
      path: at,
      atKey: true,
    });
  }
  if (choices !== undefined) {
    return choices.map((one, i) => {
      const { angle, material: own } = typeof one === 'number' ? { angle: one } : one;
      return { angle, material: own ?? material, path: [...at, 'choices', i] };
    });
  }
  const names = materials?.map((name, i) => ({ name, path: [...at, 'materials', i] })) ?? [
    { name: material, path: [...at, 'angles'] },
  ];
  return names.flatMap(({ name, path }) => (angles ?? []).map((angle) => ({ angle, material: name, path })));
}

/** The laminate whose stack is searched. @throws unknown-name, contradiction */
function laminateOf({ design, data }: DesignInputs, { laminate }: StackEntryOfSearch) {
  const entry = Object.hasOwn(design.laminates, laminate) ? design.laminates[laminate] : undefined;
  if (entry === undefined) {
    return fail({
      code: 'unknown-name',
      message: `there is no laminate \`${laminate}\``,
      allowed: `laminates of this file: ${Object.keys(design.laminates).join(', ')}`,
      ...nearestHint(laminate, Object.keys(design.laminates)),
      path: [...at, 'laminate'],
    });
  }
  const written = (data as { laminates: Record<string, { stack?: unknown }> }).laminates[laminate]?.stack;
  if (typeof written !== 'string') {
    fail({
      code: 'contradiction',
      message: `the stack of laminate \`${laminate}\` is a list, and a search writes orientation codes`,
      allowed: 'an orientation code to begin with, such as "[0/90]s"',
      path: ['laminates', laminate, 'stack'],
    });
  }
  return entry;
}

/**
 * The plies that a search may use, each once: a ply named twice, or at angles half a turn apart, is one choice.
 * @throws SelvageError with paths: `unknown-name` laminate or material, `missing-key`, `contradiction`
 */
export function stackChoices(inputs: DesignInputs, entry: StackEntryOfSearch): readonly StackChoice[] {
  const laminate = laminateOf(inputs, entry);
  const materials = Object.keys(inputs.design.materials ?? {});
  const found = new Map<string, StackChoice>();
  for (const { angle, material, path } of listed(entry, laminate.material)) {
    if (material === undefined) {
      return fail({
        code: 'missing-key',
        message: 'a ply of the search names no material',
        allowed: '{ angle, material }, or `material` of the laminate',
        path,
      });
    }
    if (!materials.includes(material)) {
      fail({
        code: 'unknown-name',
        message: `there is no material \`${material}\``,
        allowed: `materials of this file: ${materials.join(', ')}`,
        ...nearestHint(material, materials),
        path,
      });
    }
    const normal = fibreAngle(angle);
    const key = `${material} ${normal}`;
    const before = found.get(key);
    const code = before?.code ?? codeOf(normal, material, laminate, path);
    found.set(
      key,
      before ? { ...before, weight: before.weight + 1 } : { material, angle: normal, code, weight: 1, path },
    );
  }
  return [...found.values()];
}

/** A ply in the orientation code of a laminate: the angle, with the letter or the name of a material that is not the laminate's own. */
function codeOf(
  angle: number,
  material: string,
  { material: own, letters = {} }: DesignInputs['design']['laminates'][string],
  path: Path,
): string {
  const letter = Object.keys(letters).find((one) => letters[one] === material);
  const suffix = material === own ? '' : (letter ?? material);
  const code = `${angle}${suffix}`;
  const [ply, ...more] = parsed(`[${code}/0]`);
  const read = ply?.material === undefined ? own : (letters[ply.material] ?? ply.material);
  if (ply?.angle === angle && read === material && more.length === 1) return code;
  return fail({
    code: 'contradiction',
    message: `\`${code}\` cannot stand for ${material} at ${angle} degrees in an orientation code`,
    allowed: 'materials with a letter under `letters` of the laminate, angles with decimals in plain form',
    path,
  });
}

function parsed(code: string) {
  try {
    return parseOrientationCode(code);
  } catch {
    return [];
  }
}

/** The choice of the first ply; -1 when the search leaves it open. @throws unknown-name a ply that is none of the choices */
export function outerChoice(
  { outer }: StackEntryOfSearch,
  choices: readonly StackChoice[],
  material: string | undefined,
): number {
  if (outer === undefined) return -1;
  const given = typeof outer === 'number' ? { angle: outer } : outer;
  const wanted = { angle: fibreAngle(given.angle), material: given.material ?? material };
  const found = choices.findIndex((one) => one.angle === wanted.angle && one.material === wanted.material);
  if (found >= 0) return found;
  return fail({
    code: 'unknown-name',
    message: `the outer ply, ${wanted.material ?? ''} at ${wanted.angle} degrees, is none of the choices`,
    allowed: choices.map(({ code }) => code).join(', '),
    path: [...at, 'outer'],
  });
}
