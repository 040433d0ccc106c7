import { PDFArray, PDFDict, PDFName, type PDFContext, type PDFDocument } from 'pdf-lib';

const name = (text: string): PDFName => PDFName.of(text);

/** Tags the first cell of every table row below the head as the row's head, so that a reader who listens hears which room
 *  a figure is of. The templates keep the row's name in that cell. */
export function markRowHeads(document: PDFDocument): void {
  const { context } = document;
  for (const [, object] of context.enumerateIndirectObjects()) {
    if (!(object instanceof PDFDict) || object.get(name('S')) !== name('TR')) continue;
    const first = kidsOf(context, object)[0];
    if (first?.get(name('S')) !== name('TD')) continue;
    first.set(name('S'), name('TH'));
    first.set(name('A'), withScope(context, first));
  }
}

function kidsOf(context: PDFContext, element: PDFDict): readonly PDFDict[] {
  const kids = context.lookup(element.get(name('K')));
  const list = kids instanceof PDFArray ? kids.asArray() : [kids];
  return list.map((kid) => context.lookup(kid)).filter((kid) => kid instanceof PDFDict);
}

/** The cell's attributes with `Scope` among those of the table. */
function withScope(context: PDFContext, cell: PDFDict): PDFArray {
  const written = context.lookup(cell.get(name('A')));
  const all = written instanceof PDFArray ? written.asArray().map((one) => context.lookup(one)) : [written];
  const kept = all.filter((one) => one instanceof PDFDict).filter((one) => one.get(name('O')) !== name('Table'));
  const table = all.find((one): one is PDFDict => one instanceof PDFDict && one.get(name('O')) === name('Table'));
  const scoped = context.obj({ O: 'Table', Scope: 'Row' });
  for (const [key, value] of table?.entries() ?? []) if (key !== name('Scope')) scoped.set(key, value);
  return context.obj([...kept, scoped]);
}
