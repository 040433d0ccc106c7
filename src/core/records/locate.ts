import { isCollection, isMap, isNode, isScalar, type Document, type Pair } from 'yaml';
import type { Origin, Path, Position } from '../../base/problem/index.js';

/** Where the values and keys of a YAML document stand. A path that is not written down has the place of its nearest
 *  ancestor that is. */
export function locate(
  source: { readonly file: string; readonly text: string },
  document: Document.Parsed,
  position: (offset: number) => Position,
): Origin {
  const first: Position = { line: 1, column: 1 };
  const at = (path: Path): Position => {
    for (let length = path.length; length > 0; length -= 1) {
      const node: unknown = document.getIn(path.slice(0, length), true);
      if (isNode(node) && node.range) return position(node.range[0]);
      // A key without a value (`level:`) has no node of its own.
      const key = keyOffset(document, path.slice(0, length));
      if (key !== undefined) return position(key);
    }
    return first;
  };
  const key = (path: Path): Position => {
    const offset = keyOffset(document, path);
    return offset === undefined ? at(path) : position(offset);
  };
  return { ...source, at, key };
}

function keyOffset(document: Document.Parsed, path: Path): number | undefined {
  const name = path[path.length - 1];
  const parent: unknown = path.length === 1 ? document.contents : document.getIn(path.slice(0, -1), true);
  if (!isCollection(parent) || !isMap(parent)) return undefined;
  const pair = parent.items.find((item: Pair) => isScalar(item.key) && item.key.value === name);
  return pair && isScalar(pair.key) ? pair.key.range?.[0] : undefined;
}
