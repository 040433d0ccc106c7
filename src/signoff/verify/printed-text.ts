import { Allowance, openPdf, pageTexts } from '../pdf/index.js';

/** The text of each page without white space, as far as this program's own way of printing is understood; undefined when the
 *  PDF cannot be read. What is found is in the page's drawing: it cannot tell whether another drawing covers it. */
export function printedText(pdf: Uint8Array): readonly string[] | undefined {
  try {
    const file = openPdf(pdf, new Allowance(20_000));
    const [newest] = file.revisions;
    return newest && pageTexts(file, newest);
  } catch {
    return undefined;
  }
}
