import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { PDFDocument } from 'pdf-lib';
import { HouseUnderGit } from '../cli/house-under-git.js';

export interface IssuedHouse {
  /** The house folder. */
  readonly dir: string;
  /** The printed book of issue 1, in `issued/`, and its bytes. */
  readonly pdfPath: string;
  readonly pdf: Uint8Array;
  readonly digest: string;
  /** Writes the record of issue 1 anew, with signatures or another digest. */
  record(wish?: { readonly signatures?: string; readonly digest?: string }): void;
}

/** The small house in a folder of its own, issued once for sign-off on 20 April 2026 by the command. */
export async function issueSmallHouse(): Promise<IssuedHouse> {
  const house = new HouseUnderGit();
  const { code, error } = await house.run('issue --for sign-off');
  if (code !== 0) throw new Error(error);
  const { dir } = house;
  const pdfPath = join(dir, 'issued', '001.pdf');
  const recordPath = join(dir, 'content', 'issues', '001.md');
  const text = readFileSync(recordPath, 'utf8');
  const digest = /^digest: "?([0-9a-f]{64})"?$/mu.exec(text)?.[1];
  if (digest === undefined) throw new Error('the record has no digest');
  return {
    dir,
    pdfPath,
    pdf: readFileSync(pdfPath),
    digest,
    record: (wish = {}) => {
      const signed = text.replace(/^signatures:.*\n/mu, '').replace('digest:', `${wish.signatures ?? ''}digest:`);
      writeFileSync(recordPath, signed.replace(digest, wish.digest ?? digest));
    },
  };
}

/** A PDF with a line of text at the foot of each page but some. */
export async function stamp(pdf: Uint8Array, text: string, without: readonly number[] = []): Promise<Uint8Array> {
  const document = await PDFDocument.load(pdf, { updateMetadata: false });
  document.getPages().forEach((page, index) => {
    if (!without.includes(index + 1)) page.drawText(text, { x: 54, y: 12, size: 7 });
  });
  return document.save({ updateFieldAppearances: false });
}
