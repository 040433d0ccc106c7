import { spawn, type ChildProcessByStdio } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { PassThrough, type Readable, type Writable } from 'node:stream';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  createMessageConnection,
  StreamMessageReader,
  StreamMessageWriter,
  type MessageConnection,
} from 'vscode-jsonrpc/node';
import { frontMatterAlone, schemaOf } from '../../src/cli/editor/front-matter.js';
import { relay } from '../../src/cli/editor/relay.js';
import { bookmatch } from './command-line.js';

/** A language server of YAML that people use, spoken to as an editor does, about the Markdown of records. */
const root = join(import.meta.dirname, '../..');

interface Diagnostic {
  readonly range: { readonly start: { readonly line: number } };
  readonly message: string;
}

class Editor {
  readonly #server: ChildProcessByStdio<Writable, Readable, null>;
  readonly #connection: MessageConnection;
  readonly #told = new Map<string, (problems: readonly Diagnostic[]) => void>();

  constructor() {
    const program = join(root, 'node_modules/yaml-language-server/bin/yaml-language-server');
    this.#server = spawn(process.execPath, [program, '--stdio'], { stdio: ['pipe', 'pipe', 'inherit'] });
    const [says, hears] = [new PassThrough(), new PassThrough()];
    relay({ says, hears }, { says: this.#server.stdout, hears: this.#server.stdin });
    this.#connection = createMessageConnection(new StreamMessageReader(hears), new StreamMessageWriter(says));
    this.#connection.onRequest((method) => expect.unreachable(`the editor was asked for ${method}`));
    this.#connection.onNotification('textDocument/publishDiagnostics', (params: unknown) => {
      const { uri, diagnostics } = params as { readonly uri: string; readonly diagnostics: readonly Diagnostic[] };
      this.#told.get(uri)?.(diagnostics);
    });
    this.#connection.listen();
  }

  async begin(): Promise<Record<string, unknown>> {
    const answer = await this.#connection.sendRequest<{ readonly capabilities: Record<string, unknown> }>(
      'initialize',
      {
        processId: process.pid,
        rootUri: pathToFileURL(root).href,
        capabilities: { textDocument: { completion: {}, hover: { contentFormat: ['markdown'] }, formatting: {} } },
      },
    );
    await this.#connection.sendNotification('initialized', {});
    return answer.capabilities;
  }

  /** Opens a text as a record, and answers what is told of it: a line from 1, and words. */
  async open(path: string, text: string): Promise<readonly string[]> {
    const textDocument = { uri: uriOf(path), languageId: 'markdown', version: 1, text };
    return this.#problemsAfter(path, 'textDocument/didOpen', { textDocument });
  }

  async change(path: string, text: string): Promise<readonly string[]> {
    const textDocument = { uri: uriOf(path), version: 2 };
    return this.#problemsAfter(path, 'textDocument/didChange', { textDocument, contentChanges: [{ text }] });
  }

  async #problemsAfter(path: string, method: string, params: object): Promise<readonly string[]> {
    const told = new Promise<readonly Diagnostic[]>((resolve) => this.#told.set(uriOf(path), resolve));
    await this.#connection.sendNotification(method, params);
    return (await told).map(({ range, message }) => `${range.start.line + 1}: ${message.split('\n')[0] ?? ''}`);
  }

  /** What may be typed at the end of a line, counted from 1. */
  async completions(path: string, line: number, text: string): Promise<readonly string[]> {
    const character = text.split('\n')[line - 1]?.length ?? 0;
    const answer = await this.#connection.sendRequest<{ readonly items: readonly { readonly label: string }[] }>(
      'textDocument/completion',
      { textDocument: { uri: uriOf(path) }, position: { line: line - 1, character } },
    );
    return answer.items.map(({ label }) => label);
  }

  async hover(path: string, line: number, character: number): Promise<string> {
    const answer = await this.#connection.sendRequest<{ readonly contents: { readonly value: string } } | null>(
      'textDocument/hover',
      { textDocument: { uri: uriOf(path) }, position: { line: line - 1, character } },
    );
    return answer?.contents.value ?? '';
  }

  end(): void {
    this.#connection.dispose();
    this.#server.kill();
  }
}

function uriOf(path: string): string {
  return pathToFileURL(join(root, path)).href;
}

describe('an editor, with a server of YAML behind', () => {
  let editor: Editor;
  let abilities: Record<string, unknown>;
  beforeAll(async () => {
    editor = new Editor();
    abilities = await editor.begin();
  }, 60_000);
  afterAll(() => editor.end());

  test('is told of nothing that would change a text by itself', () => {
    expect(Object.keys(abilities).toSorted()).toEqual(['completionProvider', 'hoverProvider', 'textDocumentSync']);
    expect(abilities['textDocumentSync']).toEqual({ openClose: true, change: 1 });
  });

  const text = [
    '---',
    'name: Study',
    'number: "01"',
    'level: main',
    'use: studdy',
    `size: 12'-0" x 10'-0"`,
    `ceiling: 8'-0"`,
    'selections:',
    '  - { at: floor, category: floor, chosn: oak }',
    '',
    '---',
    '',
    'Prose with: a colon, *stars* and `ticks`',
    '- which: is no YAML: at all',
    '',
  ].join('\n');

  test('marks a wrong value and a wrong key at their lines, and nothing in the prose', async () => {
    const path = 'content/rooms/tried.md';
    expect(await editor.open(path, text)).toEqual([
      expect.stringMatching(/^5: Value is not accepted\. Valid values: .*"study"/u),
      expect.stringMatching(/^9: Property chosn is not allowed/u),
    ]);
    const mended = text.replace('studdy', 'study').replace('chosn', 'chosen');
    expect(await editor.change(path, mended)).toEqual([]);
  });

  test('completes keys and values, and says what a key means', async () => {
    const path = 'content/rooms/asked.md';
    const asked = text.replace('use: studdy', 'use: ').replace(', chosn: oak', '');
    await editor.open(path, asked);
    expect(await editor.completions(path, 10, asked)).toEqual(expect.arrayContaining(['features', 'openings']));
    expect(await editor.completions(path, 5, asked)).toEqual(expect.arrayContaining(['study', 'bedroom']));
    expect(await editor.hover(path, 5, 1)).toContain('What the room is used for; cautions look at it.');
    expect(await editor.hover(path, 13, 2)).toBe('');
  });

  test('finds nothing wrong in any record of the demo', async () => {
    const paths = readdirSync(join(root, 'content'), { recursive: true, encoding: 'utf8' }).filter((path) =>
      path.endsWith('.md'),
    );
    const problems = await Promise.all(
      paths.map(async (path) => {
        const told = await editor.open(join('content', path), readFileSync(join(root, 'content', path), 'utf8'));
        return told.map((one) => `${path}:${one}`);
      }),
    );
    expect(paths.length).toBeGreaterThan(80);
    expect(problems.flat()).toEqual([]);
  }, 20_000);
});

test('each kind of record has its schema, also in a shared folder; other files have none', () => {
  const named = (address: string): string | undefined => schemaOf(address)?.replace(/^.*\/schemas\//u, '');
  expect(named('file:///h/content/house.md')).toBe('house.schema.json');
  expect(named('file:///h/content/rooms/study.md')).toBe('room.schema.json');
  expect(named('file:///our-book/options/floor/oak.md')).toBe('option.schema.json');
  expect(named('file:///h/content/changes/001.md')).toBe('change-order.schema.json');
  for (const other of ['file:///h/README.md', 'file:///h/docs/house.md', 'file:///h/content/rooms/study.txt'])
    expect(named(other)).toBeUndefined();
});

test('lines stay where they are, with any line ends; what is no record is empty', () => {
  const dos = '\uFEFF---\r\nname: A\r\n---\r\nProse\r\n';
  expect(frontMatterAlone(dos, 'S')).toBe('# yaml-language-server: $schema=S\nname: A\r\n\n\n');
  expect(frontMatterAlone('---\nname: A\n---\n', undefined)).toBe('\n\n\n');
  expect(frontMatterAlone('Prose\n', 'S')).toBe('\n');
});

test('a server that is not there is named, with what installs it', async () => {
  const { code, said } = await bookmatch(['editor', '--server', 'no-such-server-of-yaml']);
  expect(code).toBe(2);
  expect(said).toContain('npm install --global yaml-language-server');
});
