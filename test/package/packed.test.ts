import { describe } from 'vitest';
import { packedCommand } from './packed-command.js';
import { packedFiles } from './packed-files.js';
import { packedImport } from './packed-import.js';
import { packedSizes } from './packed-sizes.js';
import { packedTypes } from './packed-types.js';
import { packedProject } from './project.js';
import { scriptPage } from './script-page.js';
import { scriptRuns } from './script-runs.js';

const project = packedProject();

/* One file, since one installation serves all: each part has its own file beside this one. */
describe('the packages as they are published', () => {
  describe('the files', () => packedFiles(project));
  describe('the sizes', () => packedSizes(project));
  describe('importing the core', () => packedImport(project));
  describe('the types', () => packedTypes(project));
  describe('the command', () => packedCommand(project));
  describe('the scripts of docs/examples', () => scriptRuns(project));
  describe('the page of docs/examples', () => scriptPage(project));
});
