import { join } from 'node:path';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import { programPath } from '../disk/program/index.js';
import { bookFonts } from './fonts.js';
import { layOut } from './lay-out.js';

/** A box of the page that becomes a form field. Points; y runs down from the top of the page. */
export interface PlacedField {
  readonly name: string;
  readonly kind: 'text' | 'signature';
  /** What the field is for, in words. */
  readonly says: string;
  /** From 1. */
  readonly page: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const workspace = programPath('src/print/typst');

let compiler: NodeCompiler | undefined;

/** A template of `typst/`. */
export type SheetKind = 'book' | 'change-order' | 'handout' | 'one-sheet';

/** Lays sheets, as JSON, out by `typst/<kind>.typ` as a tagged PDF (PDF/UA-1) and says where the boxes to fill in are. The templates
 *  belong to the program: when they fail, that is a fault of the program and is thrown. */
export function typeset(
  sheets: string,
  kind: SheetKind,
): { readonly pdf: Uint8Array; readonly fields: readonly PlacedField[] } {
  compiler ??= NodeCompiler.create({
    workspace,
    fontArgs: [{ fontBlobs: bookFonts().map(({ bytes }) => Buffer.from(bytes)) }],
  });
  compiler.mapShadow(join(workspace, `${kind}.json`), Buffer.from(sheets));
  const compiled = layOut(compiler, join(workspace, `${kind}.typ`));
  const document = compiled.result;
  if (!document) {
    const failure = compiled.takeDiagnostics();
    throw new Error(`page layout failed: ${JSON.stringify(failure ? compiler.fetchDiagnostics(failure) : [])}`);
  }
  const fields = compiler.query(document, { selector: '<field>', field: 'value' }) as readonly PlacedField[];
  const pdf = compiler.pdf(document, { pdfStandard: 'ua-1' });
  // What neither of the last two files was set with is let go: the book and the handouts take no longer, and some hundred megabytes less.
  compiler.evictCache(2);
  return { pdf, fields };
}
