/** Where the desk's own pages are, beside those of the book. */
export const deskPaths = {
  home: 'desk/index.html',
  record: 'desk/record.html',
  add: 'desk/add.html',
  slip: 'desk/slip.html',
  walk: 'desk/walk.html',
  agree: 'desk/agree.html',
  since: 'desk/since.html',
} as const;

/** What those pages are called, in their menu and as their heading; a record's page by its path. */
export const deskTitles: Readonly<Record<Exclude<keyof typeof deskPaths, 'record'>, string>> = {
  home: 'Desk',
  add: 'Add a record',
  slip: 'Take in a choice slip',
  walk: 'Walk a room',
  agree: 'Record and agree',
  since: 'What changed since the last issue',
};

export const deskAssets = {
  style: 'desk/assets/desk.css',
  scripts: ['desk/assets/there.js', 'desk/assets/desk.js'],
} as const;

/** Where a page asks whether the desk is still there, and hears what changes. */
export const deskAnswers = { here: 'desk/here', changes: 'desk/changes' } as const;

/** The way to the desk, among the chapters of the book. */
export const deskEntry = { id: 'desk', title: 'Desk', path: deskPaths.home } as const;
