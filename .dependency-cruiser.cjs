// The layers of the project: which package may import which. See docs/architecture.md.
const MAY_IMPORT = {
  engine: [],
  library: ['engine'],
  figures: ['engine'],
  contract: ['engine', 'library'],
  server: ['engine', 'library', 'figures', 'contract'],
  web: ['engine', 'library', 'figures', 'contract'],
  cli: ['engine', 'library', 'figures', 'contract', 'server'],
};

const layers = Object.entries(MAY_IMPORT).map(([name, allowed]) => ({
  name: `${name}-layer`,
  comment: `packages/${name} may import ${allowed.length > 0 ? allowed.join(', ') : 'no other package'}`,
  severity: 'error',
  from: { path: `^packages/${name}/` },
  to: { path: '^packages/', pathNot: `^packages/(${[name, ...allowed].join('|')})/` },
}));

module.exports = {
  forbidden: [
    ...layers,
    {
      name: 'no-circular',
      comment: 'no cycles, type imports counted',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'only-the-index',
      comment: 'a package exposes its index.ts and nothing else',
      severity: 'error',
      from: { path: '^packages/([^/]+)/' },
      to: { path: '^packages/[^/]+/src/', pathNot: ['^packages/$1/', '^packages/[^/]+/src/index\\.ts$'] },
    },
    {
      name: 'server-only-for-serve',
      comment: 'of the commands only serve needs the server',
      severity: 'error',
      from: { path: '^packages/cli/', pathNot: '^packages/cli/src/commands/serve\\.ts$' },
      to: { path: '^packages/server/' },
    },
    {
      name: 'pure-packages',
      comment: 'engine, library and figures use no node module',
      severity: 'error',
      from: { path: '^packages/(engine|library|figures)/src/', pathNot: '\\.test\\.ts$|-test-kit\\.ts$' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'no-undeclared',
      comment: 'every package imported is declared; what only tests need, by the root',
      severity: 'error',
      from: { pathNot: '\\.test\\.tsx?$|-test-kit\\.ts$|^validation/' },
      to: { dependencyTypes: ['npm-no-pkg', 'unknown'] },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '(^|/)dist/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'types', 'default'] },
  },
};
