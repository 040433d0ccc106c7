import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A PDF on disk, looked at with tools that are not ours. */
export interface Printed {
  readonly path: string;
  /** Text of all pages, or of some. */
  text(from?: number, to?: number): string;
  /** The same in the order in which it was written, column after column. */
  reading(from?: number, to?: number): string;
  /** Addresses that links lead to. */
  addresses(): readonly string[];
  /** Every word with the box it is drawn in; points, y down. */
  boxes(): readonly WordBox[];
  info(): string;
  /** What poppler complains of while it reads the file; empty where nothing is odd. */
  complaints(): string;
  fonts(): readonly { readonly name: string; readonly embedded: string }[];
  attachments(): string;
  attachment(): string;
  /** The tag tree with the text of each tag. */
  tags(): string;
  /** Throws with the tool's words when the file is not sound. */
  check(): string;
}

export interface WordBox {
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly page: { readonly width: number; readonly height: number };
}

export function putDown(pdf: Uint8Array): Printed {
  const folder = mkdtempSync(join(tmpdir(), 'bookmatch-print-'));
  const path = join(folder, 'book.pdf');
  writeFileSync(path, pdf);
  return {
    path,
    text: (from = 1, to = 999) => run('pdftotext', ['-layout', '-f', String(from), '-l', String(to), path, '-']),
    reading: (from = 1, to = 999) => run('pdftotext', ['-raw', '-f', String(from), '-l', String(to), path, '-']),
    addresses: () => [...run('pdfinfo', ['-url', path]).matchAll(/^ *\d+ +\S+ +(.+)$/gmu)].map(([, url = '']) => url),
    boxes: () => readBoxes(run('pdftotext', ['-bbox', path, '-'])),
    info: () => run('pdfinfo', [path]),
    complaints: () => spawnSync('pdfinfo', [path], { encoding: 'utf8' }).stderr,
    fonts: () =>
      run('pdffonts', [path])
        .split('\n')
        .slice(2)
        .filter((line) => line !== '')
        .map(readFont),
    attachments: () => run('pdfdetach', ['-list', path]),
    attachment: () => {
      const out = join(folder, 'book.json');
      run('pdfdetach', ['-save', '1', '-o', out, path]);
      return readFileSync(out, 'utf8');
    },
    tags: () => run('pdfinfo', ['-struct-text', path]),
    check: () => run('qpdf', ['--check', path]),
  };
}

function run(command: string, words: readonly string[]): string {
  return execFileSync(command, words, {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'ignore'],
    maxBuffer: 64 * 1024 * 1024,
  });
}

function readBoxes(html: string): WordBox[] {
  let page = { width: 0, height: 0 };
  return html.split('\n').flatMap((line) => {
    const size = /<page width="([\d.]+)" height="([\d.]+)"/.exec(line);
    if (size) page = { width: Number(size[1]), height: Number(size[2]) };
    const word = /<word xMin="(-?[\d.]+)" yMin="(-?[\d.]+)" xMax="(-?[\d.]+)" yMax="(-?[\d.]+)">(.*)<\/word>/.exec(
      line,
    );
    if (!word) return [];
    const [left = 0, top = 0, right = 0, bottom = 0] = word.slice(1, 5).map(Number);
    return [{ text: word[5] ?? '', left, top, right, bottom, page }];
  });
}

/** A line of pdffonts: the name, then from column 70 emb, sub, uni. */
function readFont(line: string): { name: string; embedded: string } {
  return { name: line.slice(0, 36).trim(), embedded: line.slice(72, 76).trim() };
}
