/** The floors of packages/core/src: a folder imports only from floors below it, through the other folder's index. */
const floors = {
  problem: 0,
  provenance: 0,
  quantity: 0,
  numeric: 0,
  expression: 0,
  working: 0,
  material: 1,
  statistics: 1,
  laminate: 2,
  stitch: 2,
  fracture: 3,
  coupon: 3,
  blade: 3,
  examples: 4,
  study: 4,
  design: 4,
  answers: 4,
  report: 5,
};
const core = '^packages/core/src/';
const folder = (names) => `${core}(${names.join('|')})/`;
const names = Object.keys(floors);

const upward = names
  .map((name) => ({ name, above: names.filter((other) => floors[other] > floors[name]) }))
  .filter(({ above }) => above.length > 0)
  .map(({ name, above }) => ({
    name: `floor-of-${name}`,
    comment: `${name} stands on floor ${floors[name]} and may not import from a higher floor`,
    severity: 'error',
    from: { path: folder([name]) },
    to: { path: folder(above) },
  }));

module.exports = {
  forbidden: [
    ...upward,
    {
      name: 'no-circles',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'through-the-door',
      comment: 'a folder is entered through its index.ts',
      severity: 'error',
      from: { path: `${core}([^/]+)/` },
      to: { path: `${core}[^/]+/`, pathNot: [`${core}$1/`, `${core}[^/]+/index\\.ts$`] },
    },
    {
      name: 'index-through-the-door',
      severity: 'error',
      from: { path: `${core}index\\.ts$` },
      to: { path: `${core}[^/]+/`, pathNot: `${core}[^/]+/index\\.ts$` },
    },
    {
      name: 'known-floor',
      comment: 'a new folder of the core needs a floor in .dependency-cruiser.cjs',
      severity: 'error',
      from: {},
      to: { path: core, pathNot: [`${core}[^/]+\\.ts$`, folder(names)] },
    },
    {
      name: 'core-runs-in-a-browser',
      comment: 'no node built-ins in the core',
      severity: 'error',
      from: { path: core },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'cli-through-the-door',
      severity: 'error',
      from: { path: '^packages/cli/src' },
      to: { path: core, pathNot: `${core}index\\.ts$` },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      conditionNames: ['@selvage/source', 'import', 'default'],
      extensions: ['.ts', '.js', '.json'],
    },
  },
};
