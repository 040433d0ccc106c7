/** The arrows of the code, as a list in the order of the flow: a room imports only from rooms above it. */
const flow = [
  ['units'],
  ['problem'],
  ['geometry', 'model', 'svg', 'sheet'],
  ['fact'],
  ['feature'],
  ['records'],
  ['measure'],
  ['takeoff'],
  ['price'],
  ['calendar'],
  ['caution'],
  ['scope'],
  ['book'],
  ['compare', 'draw', 'export'],
  ['table'],
  ['handout'],
  ['write'],
  ['store', 'history', 'signoff'],
  ['load'],
  ['site', 'print'],
  ['cli'],
];

const folder = (rooms) => `^src/(${rooms.join('|')})/`;

const upward = flow.slice(0, -1).map((rooms, index) => ({
  name: `${rooms.join('-')}-imports-only-from-before`,
  comment: 'Arrows point one way: records, measure, take-off, price, calendar, Book, then what renders it.',
  severity: 'error',
  from: { path: folder(rooms) },
  to: { path: folder(flow.slice(index + 1).flat()) },
}));

const sideways = flow
  .filter((rooms) => rooms.length > 1)
  .flatMap((rooms) =>
    rooms.map((room) => ({
      name: `${room}-leaves-its-neighbours-alone`,
      comment: 'Rooms of one step know nothing of each other.',
      severity: 'error',
      from: { path: folder([room]) },
      to: { path: folder(rooms.filter((other) => other !== room)) },
    })),
  );

module.exports = {
  forbidden: [
    ...upward,
    ...sideways,
    {
      name: 'no-cycles',
      comment: 'Two files that need each other, be it for a type, have a third one in them.',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'pure-rooms-touch-no-disk',
      comment: 'Only store, load, site, print and cli reach outside the program.',
      severity: 'error',
      from: { path: '^src/', pathNot: folder(['store', 'history', 'signoff', 'load', 'site', 'print', 'cli']) },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'rooms-are-entered-by-their-index',
      comment: 'A room decides what it shows.',
      severity: 'error',
      from: { path: '^src/([^/]+)/' },
      to: { path: '^src/([^/]+)/', pathNot: ['^src/$1/', '/index\\.ts$'] },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { extensions: ['.ts', '.tsx', '.js', '.json'] },
  },
};
