/** The arrows of the code, as a list in the order of the flow: a room imports only from rooms above it. */
const flow = [
  ['base/units'],
  ['base/problem'],
  ['base/geometry', 'base/svg', 'core/model', 'sheet'],
  ['core/fact', 'core/opening'],
  ['core/feature'],
  ['core/records'],
  ['core/measure'],
  ['core/lay'],
  ['core/takeoff'],
  ['core/price'],
  ['core/calendar'],
  ['core/caution'],
  ['core/scope'],
  ['core/book'],
  ['core/compare', 'draw', 'draft', 'manual', 'photo', 'try'],
  ['table'],
  ['handout', 'slip'],
  ['write'],
  ['where'],
  ['disk/program'],
  ['signoff', 'disk/store', 'disk/history'],
  ['disk/load'],
  ['site', 'print', 'in-page'],
  ['desk'],
  ['cli', 'api'],
];

/** Rooms that reach outside the program. */
const shells = [
  'disk/program',
  'signoff',
  'disk/store',
  'disk/history',
  'disk/load',
  'site',
  'print',
  'desk',
  'cli',
  'api',
];

const folder = (rooms) => `^src/(${rooms.join('|')})/`;

const upward = flow.slice(0, -1).map((rooms, index) => ({
  name: `${rooms.join('-')}-imports-only-from-before`.replaceAll('/', '-'),
  comment: 'Arrows point one way: records, measure, take-off, price, calendar, Book, then what renders it.',
  severity: 'error',
  from: { path: folder(rooms) },
  to: { path: folder(flow.slice(index + 1).flat()) },
}));

const sideways = flow
  .filter((rooms) => rooms.length > 1)
  .flatMap((rooms) =>
    rooms.map((room) => ({
      name: `${room}-leaves-its-neighbours-alone`.replaceAll('/', '-'),
      comment: 'Rooms of one step know nothing of each other.',
      severity: 'error',
      from: { path: folder([room]) },
      to: { path: folder(rooms.filter((other) => other !== room)) },
    })),
  );

/** A room is a folder of `src`, or of one of the three that hold several. */
const room = '((?:base/|core/|disk/)?[^/]+)';

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
      name: 'no-room-outside-the-flow',
      comment: 'A new room has its place in the list above.',
      severity: 'error',
      from: { path: '^src/', pathNot: folder(flow.flat()) },
      to: {},
    },
    {
      name: 'pure-rooms-touch-no-disk',
      comment: 'Only the rooms around the core reach outside the program.',
      severity: 'error',
      from: { path: '^src/', pathNot: folder(shells) },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'rooms-are-entered-by-their-index',
      comment: 'A room decides what it shows.',
      severity: 'error',
      from: { path: `^src/${room}/` },
      to: { path: `^src/${room}/`, pathNot: ['^src/$1/', '/index\\.ts$'] },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { extensions: ['.ts', '.tsx', '.js', '.json'] },
  },
};
