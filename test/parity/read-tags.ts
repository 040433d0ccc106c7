/** Tables of a PDF by its tags, as `pdfinfo -struct-text` tells them. */
export interface TaggedTable {
  readonly caption: string;
  readonly rows: readonly TaggedRow[];
}

/** A row with the tag of each cell: `TH` or `TD`. */
export interface TaggedRow {
  readonly cells: readonly { readonly tag: string; readonly text: string }[];
}

/** A tag with what stands in it: tags, and texts as tags of the name `"`. */
export interface Tag {
  readonly name: string;
  readonly indent: number;
  readonly inside: Tag[];
  text: string;
  /** `Column`, `Row`; empty for what is no head. */
  scope: string;
}

export function readTaggedTables(tags: string): readonly TaggedTable[] {
  const root = readTagTree(tags);
  const tables: TaggedTable[] = [];
  let caption = '';
  walk(root, (tag) => {
    if (tag.name === 'Caption') caption = wordsOf(tag);
    if (tag.name !== 'Table') return;
    const rows: TaggedRow[] = [];
    walk(tag, (row) => {
      if (row.name === 'Caption') caption = wordsOf(row);
      if (row.name === 'TR') rows.push({ cells: row.inside.map((cell) => ({ tag: cell.name, text: wordsOf(cell) })) });
    });
    tables.push({ caption, rows });
    caption = '';
  });
  return tables;
}

/** The tree of a PDF's tags. */
export function readTagTree(tags: string): Tag {
  const root: Tag = { name: '', indent: -1, inside: [], text: '', scope: '' };
  const open = [root];
  for (const line of tags.split('\n')) {
    const indent = line.search(/\S/u);
    const [, scope] = /^\s*\/Scope \/(\w+)$/u.exec(line) ?? [];
    const last = open.at(-1);
    if (scope !== undefined && last) last.scope = scope;
    if (indent < 0 || line.trimStart().startsWith('/')) continue;
    const quoted = /^\s*"(.*)"$/su.exec(line);
    while ((open.at(-1)?.indent ?? -1) >= indent) open.pop();
    const parent = open.at(-1) ?? root;
    if (quoted) {
      parent.text += `${quoted[1] ?? ''} `;
      parent.inside.push({ name: '"', indent, inside: [], text: quoted[1] ?? '', scope: '' });
      continue;
    }
    const tag: Tag = { name: /^\s*(\w+)/u.exec(line)?.[1] ?? '', indent, inside: [], text: '', scope: '' };
    parent.inside.push(tag);
    open.push(tag);
  }
  return root;
}

function walk(tag: Tag, see: (tag: Tag) => void): void {
  see(tag);
  tag.inside.forEach((inside) => walk(inside, see));
}

function wordsOf(tag: Tag): string {
  return tag.name === '"' ? tag.text : tag.inside.map(wordsOf).join(' ');
}
