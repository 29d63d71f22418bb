/**
 * The arrows of the house. Inside shared-model a room imports only rooms above it, and only through that room's index.
 * Each rule says in its comment why it is there.
 */
const rooms = [
  'units',
  'outcome',
  'sources',
  'materials',
  'profile',
  'parts',
  'crops',
  'seating',
  'layout',
  'reservoir',
  'structure',
  'cutting',
  'rings',
  'bench',
  'bill',
  'pricing',
  'design',
  'cautions',
  'plan',
  'fits',
  'words',
  'sheet',
  'paper'
]

const upward = rooms.slice(0, -1).map((room, at) => ({
  name: `${room}-imports-only-rooms-above`,
  comment: `${room} may know only the rooms above it: a lower room's change must never reach it.`,
  severity: 'error',
  from: { path: `^shared-model/${room}/` },
  to: { path: `^shared-model/(${rooms.slice(at + 1).join('|')})/` }
}))

module.exports = {
  forbidden: [
    ...upward,
    {
      name: 'rooms-through-their-index',
      comment: 'A room is entered by its door, so that its files can move about inside.',
      severity: 'error',
      from: { path: '^shared-model/([^/]+)/' },
      to: { path: '^shared-model/([^/]+)/.+', pathNot: ['^shared-model/$1/', '^shared-model/[^/]+/index\\.ts$'] }
    },
    {
      name: 'hosts-through-a-rooms-index',
      comment: 'The same door for the page and the shell.',
      severity: 'error',
      from: { path: '^(renderer|main)/' },
      to: { path: '^shared-model/[^/]+/.+', pathNot: '^shared-model/[^/]+/index\\.ts$' }
    },
    {
      name: 'model-is-pure',
      comment:
        'The model knows no host: only itself, zod at the border, the solver for cutting, and the types of pdfmake.',
      severity: 'error',
      from: { path: '^shared-model/' },
      to: { pathNot: ['^shared-model/', '(^|/)node_modules/(zod|highs)/'], dependencyTypesNot: ['type-only'] }
    },
    {
      name: 'model-borrows-types-of-pdfmake-only',
      comment: 'A document definition is data; its types are all that paper needs.',
      severity: 'error',
      from: { path: '^shared-model/' },
      to: { pathNot: ['^shared-model/', '(^|/)node_modules/(zod|highs|@types/pdfmake|pdfmake)/'] }
    },
    {
      name: 'solver-in-cutting-only',
      comment: 'The whole-number solver belongs to cut plans; a host starts it and hands it in.',
      severity: 'error',
      from: { path: '^shared-model/', pathNot: '^shared-model/cutting/' },
      to: { path: '(^|/)node_modules/highs/' }
    },
    {
      name: 'page-knows-the-bridge-by-type-only',
      comment: 'The page runs in a sandbox: of the shell it may know the contract, never its code.',
      severity: 'error',
      from: { path: '^renderer/' },
      to: { path: '^main/', pathNot: '^main/bridge/contract\\.ts$' }
    },
    {
      name: 'page-imports-no-node',
      comment: 'Nothing of Node reaches the page.',
      severity: 'error',
      from: { path: '^renderer/' },
      to: { dependencyTypes: ['core'] }
    },
    {
      name: 'shell-does-not-import-the-page',
      comment: 'The shell serves the page as built files.',
      severity: 'error',
      from: { path: '^main/' },
      to: { path: '^renderer/' }
    },
    {
      name: 'electron-in-the-shell-only',
      comment: 'File services, commands and the page server run and are tested in plain Node.',
      severity: 'error',
      from: { path: '^(main|shared-model|renderer)/', pathNot: '^main/(index|preload)\\.ts$|^main/shell/' },
      to: { path: '(^|/)node_modules/electron/' }
    },
    {
      name: 'nothing-imports-tests',
      comment: 'Tests look at the program; the program does not know them.',
      severity: 'error',
      from: { path: '^(main|shared-model|renderer)/' },
      to: { path: '^test/' }
    },
    {
      name: 'no-cycles',
      comment: 'A cycle is one idea in two files, or two in one.',
      severity: 'error',
      from: {},
      to: { circular: true }
    },
    {
      name: 'everything-resolves',
      comment: 'An import that cannot be followed cannot be checked.',
      severity: 'error',
      from: { path: '^(main|shared-model|renderer|test)/' },
      to: { couldNotResolve: true }
    }
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    parser: 'swc',
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      extensions: ['.ts', '.tsx', '.mjs', '.js', '.json'],
      conditionNames: ['import', 'require', 'node', 'types', 'default']
    },
    exclude: { path: '^(out|test/gates/bad)/' }
  }
}
