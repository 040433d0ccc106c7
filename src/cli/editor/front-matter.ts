import { pathToFileURL } from 'node:url';
import type { RecordKind } from '../../core/records/index.js';
import { programPath } from '../../disk/program/index.js';

const schemas: Readonly<Record<RecordKind, string>> = {
  house: 'house',
  rooms: 'room',
  options: 'option',
  categories: 'category',
  trades: 'trade',
  alternatives: 'alternative',
  'price-lists': 'price-list',
  changes: 'change-order',
  issues: 'issue',
};

/** The schema of a record by its address, `file:///…/content/rooms/study.md`, as an address on this disk; undefined of any other file. A shared
 *  folder's records have no `content/` above them. */
export function schemaOf(address: string): string | undefined {
  const [, kind] = /\/(?:content\/(house)|(options)\/[^/]+\/[^/]+|([a-z-]+)\/[^/]+)\.md$/u
    .exec(address)
    ?.filter((part) => part !== undefined) ?? [undefined, undefined];
  const name = Object.entries(schemas).find(([one]) => one === kind)?.[1];
  return name === undefined ? undefined : pathToFileURL(programPath(`schemas/${name}.schema.json`)).href;
}

/** A record's front matter as YAML with the schema that it follows: each of its lines in its own place, the prose beneath as empty lines. Of what
 *  has no front matter, or no schema, nothing is left. */
export function frontMatterAlone(text: string, schema: string | undefined): string {
  const lines = text.split('\n');
  const isFence = (line: string | undefined): boolean => line?.trimEnd() === '---';
  const end = lines.findIndex((line, index) => index > 0 && isFence(line));
  const isRecord = schema !== undefined && isFence(lines[0]?.replace(/^\uFEFF/u, ''));
  const stands = (index: number): boolean => isRecord && (end === -1 || index < end);
  return lines
    .map((line, index) => {
      if (!stands(index)) return '';
      return index === 0 ? `# yaml-language-server: $schema=${schema ?? ''}` : line;
    })
    .join('\n');
}
