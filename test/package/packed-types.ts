import { writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { expect, it } from 'vitest';
import { inRoot } from '../docs/support/pages.js';
import type { PackedProject } from './project.js';

/** A program of a script author. A name that were `any` would leave a directive unused, which is an error. */
const consumer = (core: string): string => `
import { bridgingPriors, engineeringConstants, evaluateBatch, laminate, ply, readDesign, report, assemble, SelvageError, stiffness } from '${core}';
import type { Batch, Design, Laminate, Prior, Problem, Report, StitchPlan, Sweep } from '${core}';

const ud = ply({ E1: 140e9, E2: 9.5e9, G12: 5e9, nu12: 0.3, thickness: 0.2e-3 });
export const plate: Laminate = laminate([0, 90].map((angle) => ({ ...ud, angle })));
export const Ex: number = engineeringConstants(stiffness(plate)).inPlane.Ex;
export const design: Design = readDesign('format: 1');
export const whole: Report = report(assemble(design));
export const title: string = design.title;
export const prior: Prior = bridgingPriors.frictionStress;
export const problems = (error: unknown): readonly Problem[] => (error instanceof SelvageError ? error.problems : []);
export type Others = [Batch, StitchPlan, Sweep];

// @ts-expect-error a text is no modulus
ply({ E1: '140 GPa', E2: 9.5e9, G12: 5e9, nu12: 0.3, thickness: 0.2e-3 });
// @ts-expect-error a prior that there is none of
bridgingPriors.frictionStres;
// @ts-expect-error the key of a design file that there is none of
design.laminate;
// @ts-expect-error a batch needs its result
evaluateBatch({} as Batch);
`;

/**
 * Settings under which programs outside are compiled; declarations of libraries are checked too. Those of zod name `URL`, which comes with the types of
 * Node or of a page.
 */
const resolutions = [
  ['node16', 'node16', 'node'],
  ['nodenext', 'nodenext', 'node'],
  ['bundler', 'esnext', 'page'],
] as const;

export function packedTypes({ at, node }: PackedProject): void {
  const compiler = createRequire(import.meta.url).resolve('typescript/lib/tsc.js');

  it.each(resolutions)(
    'compile in a project outside, found as %s does in a %s module, with %j',
    async (...settings) => {
      const [moduleResolution, module, place] = settings;
      await writeFile(at('consumer.ts'), consumer('@selvage/core'));
      await writeFile(at('consumer-in-a-page.ts'), consumer('@selvage/core/browser'));
      const compilerOptions = {
        noEmit: true,
        strict: true,
        skipLibCheck: false,
        target: 'es2022',
        lib: place === 'page' ? ['ES2022', 'DOM'] : ['ES2022'],
        types: place === 'page' ? [] : ['node'],
        typeRoots: [inRoot('node_modules/@types')],
        module,
        moduleResolution,
      };
      await writeFile(at('tsconfig.json'), JSON.stringify({ compilerOptions, include: ['*.ts'] }));
      expect(await node(compiler, '-p', at())).toEqual({ code: 0, stdout: '', stderr: '' });
    },
    180_000,
  );
}
