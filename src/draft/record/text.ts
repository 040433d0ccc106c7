import { Document, isCollection, isNode, isScalar, isSeq, parseDocument, visit } from 'yaml';
import type { Path } from '../../base/problem/index.js';

/** What stands beside the values of a record that is drafted. */
export interface RecordStyle {
  /** Remarks over values, by their path. */
  readonly remarks?: readonly (readonly [path: Path, remark: string])[];
  /** Markdown under the front matter. */
  readonly body?: string;
  /** Lists whose items stand in one line each. */
  readonly inline?: readonly string[];
}

/** A record's text from its values: the one template of drafted records. Quoting is the YAML library's. A list of words stands in one
 *  line, and so do the items of the lists that are `inline`. */
export function recordText(values: object, { remarks = [], body = '', inline = [] }: RecordStyle = {}): string {
  const document = new Document(values);
  inOneLine(document);
  for (const name of inline) {
    const list: unknown = document.get(name, true);
    if (isSeq(list)) list.items.filter(isCollection).forEach((item) => (item.flow = true));
  }
  for (const [path, remark] of remarks) {
    const node: unknown = keyAt(document, path);
    if (isNode(node)) node.commentBefore = ` ${remark}`;
  }
  return framed(document, body);
}

/** A drafted record's text with more keys behind its own, which stay as they are written. */
export function withKeys(text: string, values: object): string {
  const [, front = '', body = ''] = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/u.exec(text) ?? [];
  const document: Document = parseDocument(front);
  for (const [key, value] of Object.entries(values)) {
    const node = document.createNode(value);
    inOneLine(node);
    document.set(key, node);
  }
  return framed(document, body);
}

/** A list of words stands in one line. */
function inOneLine(within: Document | ReturnType<Document['createNode']>): void {
  visit(within, {
    Seq: (_, list) => {
      if (list.items.every(isScalar)) list.flow = true;
    },
  });
}

function framed(document: Document, body: string): string {
  const front = document.toString({ lineWidth: 0, flowCollectionPadding: true });
  return `---\n${front}---\n${body.trim() === '' ? '' : `\n${body.trim()}\n`}`;
}

/** The key of a pair: what is said about a value stands over its key. */
function keyAt(document: Document, path: Path): unknown {
  const parent: unknown = path.length === 1 ? document.contents : document.getIn(path.slice(0, -1), true);
  const items = (parent as { readonly items?: readonly { readonly key?: unknown }[] } | undefined)?.items ?? [];
  return items.map(({ key }) => key).find((key) => isScalar(key) && key.value === path.at(-1));
}
