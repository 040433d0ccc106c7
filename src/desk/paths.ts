/** Where the desk's own pages are, beside those of the book. */
export const deskPaths = {
  home: 'desk/index.html',
  record: 'desk/record.html',
  add: 'desk/add.html',
  slip: 'desk/slip.html',
  walk: 'desk/walk.html',
  agree: 'desk/agree.html',
} as const;

export const deskAssets = { style: 'desk/assets/desk.css', script: 'desk/assets/desk.js' } as const;
