import { parseDocument } from 'htmlparser2';

type Node = ReturnType<typeof parseDocument>['children'][number];

/** Tables of a page as one reads them: by id, the heads and each row by its anchor. */
export interface HtmlTable {
  readonly caption: string;
  readonly heads: readonly string[];
  readonly rows: ReadonlyMap<string, readonly string[]>;
  /** The text of each row without an anchor: heads of groups, sums. */
  readonly others: readonly string[];
}

export function readHtmlTables(html: string): ReadonlyMap<string, HtmlTable> {
  const tables = find(parseDocument(html).children, 'table');
  return new Map(
    tables.map((table) => {
      const rows = find(childrenOf(table), 'tr');
      const heads = find(find(childrenOf(table), 'thead'), 'th').map(textOf);
      const named = rows.flatMap((row): [string, readonly string[]][] => {
        const id = attribute(row, 'id');
        const cells = childrenOf(row).filter((cell) => ['th', 'td'].includes(nameOf(cell)));
        return id === undefined ? [] : [[id, cells.map(textOf)]];
      });
      const others = rows.filter((row) => attribute(row, 'id') === undefined).map(textOf);
      const caption = find(childrenOf(table), 'caption').map(textOf).join('');
      return [attribute(table, 'id') ?? '', { caption, heads, rows: new Map(named), others }];
    }),
  );
}

const nameOf = (node: Node): string => ('name' in node ? node.name : '');
const childrenOf = (node: Node): readonly Node[] => ('children' in node ? node.children : []);
const attribute = (node: Node, name: string): string | undefined =>
  'attribs' in node ? node.attribs[name] : undefined;

function find(nodes: readonly Node[], name: string): readonly Node[] {
  return nodes.flatMap((node) => [...(nameOf(node) === name ? [node] : []), ...find(childrenOf(node), name)]);
}

function textOf(node: Node): string {
  return 'data' in node ? node.data : childrenOf(node).map(textOf).join('');
}
