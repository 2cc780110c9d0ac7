import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Metafile } from 'esbuild';

/** The folder of the package that an input of a bundle belongs to; undefined for our own files. */
const packageFolder = (input: string): string | undefined =>
  /^.*\/node_modules\/(?:@[^/]+\/)?[^/]+(?=\/)/.exec(input)?.[0];

function licenceOf(folder: string): string {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const file = readdirSync(folder).find((entry) => /^licen[cs]e/i.test(entry));
  if (file === undefined) throw new Error(`${name} is bundled and has no text of its licence`);
  return `${name} ${version} (${license})\n\n${readFileSync(join(folder, file), 'utf8').trim()}\n`;
}

/**
 * The licences of the packages that have gone into a bundle, for the reader of the bundle: they ask to be passed on with the code.
 * @param root the folder from which the bundle was made
 */
export function bundledLicences({ outputs }: Metafile, root: string): string {
  const inputs = Object.values(outputs).flatMap((output) =>
    Object.entries(output.inputs).flatMap(([path, { bytesInOutput }]) => (bytesInOutput > 0 ? [path] : [])),
  );
  const folders = new Set(inputs.flatMap((path) => packageFolder(path) ?? []));
  const texts = [...folders].map((folder) => licenceOf(resolve(root, folder))).sort();
  return `This bundle contains the following packages.\n\n${texts.join(`\n${'-'.repeat(80)}\n\n`)}`;
}
