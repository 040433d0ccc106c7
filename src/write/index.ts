/** Sheets in every form that they are read in. In: a `Sheet`, laid out. Out: HTML, what Typst sets, CSV, JSON, text. Markup only:
 *  no words, no arithmetic, no choice of what is said. */
export { anchorOf } from './anchor.js';
export { tableCsv, tableJson } from './data.js';
export { BlocksHtml, SheetHtml } from './html/sheet.js';
export { CellHtml, type Links } from './html/cell.js';
export { Figure } from './html/figure.js';
export { phraseHtml, proseHtml } from './html/markdown.js';
export { SignMark } from './html/sign.js';
export { isLong, RowOpener } from './html/row-opener.js';
export { Svg } from './html/svg.js';
export { DrawnPicture, Keys, LookHtml, LookWords } from './html/look.js';
export { TableHtml } from './html/table.js';
export { printLine, printSheet, printSigns, printTable, type Labels, type PrintSheet, type PrintTable } from './pdf.js';
export { readProse, type Block as ProseBlock } from './read-prose.js';
export { blocksText, tableText } from './text.js';
export { bookCalendar } from './ics/index.js';
