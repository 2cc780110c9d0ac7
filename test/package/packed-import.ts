import { writeFile } from 'node:fs/promises';
import * as source from '@selvage/core';
import { expect, it } from 'vitest';
import type { PackedProject } from './project.js';

/** Imports a module and says what that has changed around it. */
const watching = (name: string): string => `
// Copies of zod find each other by two names of their own.
const shared = () => [globalThis, ...['Object', 'Array', 'String', 'Number', 'Map', 'Promise', 'Function', 'Math', 'JSON'].flatMap((name) =>
  [globalThis[name], globalThis[name].prototype ?? {}])].map((one) => Reflect.ownKeys(one).map(String).filter((key) => !key.startsWith('__zod_')).join());
const waiting = () => process.getActiveResourcesInfo().sort();
let timers = 0;
for (const start of ['setTimeout', 'setInterval', 'setImmediate', 'queueMicrotask']) {
  const original = globalThis[start];
  globalThis[start] = (...args) => { timers++; return original(...args); };
}
const listeners = () => process.eventNames().map(String).sort();
const before = [shared(), listeners()];
const resources = waiting();
const cpu = process.cpuUsage();
const module = await import('${name}');
const { user, system } = process.cpuUsage(cpu);
const after = [shared(), listeners()];
const stillWaiting = waiting();
process.stdout.write(JSON.stringify({
  names: Object.keys(module).sort(), before, after, resources, stillWaiting, timers, seconds: (user + system) / 1e6,
}));
`;

export function packedImport({ at, node }: PackedProject): void {
  const names = Object.keys(source).sort();

  it.each(['@selvage/core', '@selvage/core/browser'])(
    '%s gives the public names and changes nothing around it',
    async (name) => {
      await writeFile(at('watching.mjs'), watching(name));
      const { code, stdout, stderr } = await node('watching.mjs');
      expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
      const found = JSON.parse(stdout);
      expect(found.names).toEqual(names);
      expect(found.after).toEqual(found.before);
      expect(found.stillWaiting).toEqual(found.resources);
      expect(found.timers).toBe(0);
      // Reading and compiling the bundle takes about 0.15 s; all of the units library, once loaded, took a second more.
      expect(found.seconds).toBeLessThan(0.75);
    },
  );

  it('by a path below the package is refused', async () => {
    const { code, stderr } = await node('--input-type=module', '--eval', "import '@selvage/core/dist/index.js'");
    expect(code).toBe(1);
    expect(stderr).toContain('ERR_PACKAGE_PATH_NOT_EXPORTED');
  });

  it('of a project that calls for the condition of the workspace gives the same library', async () => {
    const text = "import('@selvage/core').then((core) => process.stdout.write(Object.keys(core).sort().join()))";
    const { stdout } = await node('--conditions=@selvage/source', '--eval', text);
    expect(stdout).toBe(names.join());
  });
}
