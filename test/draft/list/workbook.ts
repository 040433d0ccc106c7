import { strToU8, zipSync } from 'fflate';

/** A cell as a workbook writes it: a number, a text, a day by its number, a formula with the value that it had. */
export type WrittenCell =
  number | string | boolean | { readonly day: number } | { readonly formula: string; readonly value?: number };

/** The parts of a workbook with one sheet, `Prices`. */
export function workbookParts(
  rows: readonly (readonly WrittenCell[])[],
  sheetXml = sheetOf(rows),
): Record<string, string> {
  const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
  const office = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
  return {
    '[Content_Types].xml': '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"/>',
    'xl/workbook.xml': `<workbook xmlns="${main}" xmlns:r="${office}"><sheets><sheet name="Prices" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${office}/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="rId2" Type="${office}/styles" Target="styles.xml"/></Relationships>`,
    'xl/styles.xml': `<styleSheet xmlns="${main}"><cellXfs><xf numFmtId="0"/><xf numFmtId="14"/></cellXfs></styleSheet>`,
    'xl/worksheets/sheet1.xml': `<worksheet xmlns="${main}"><sheetData>${sheetXml}</sheetData></worksheet>`,
  };
}

export function workbook(rows: readonly (readonly WrittenCell[])[], sheetXml?: string): Uint8Array {
  return packed(workbookParts(rows, sheetXml));
}

export function packed(parts: Readonly<Record<string, string>>): Uint8Array {
  return zipSync(Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strToU8(text)])));
}

function sheetOf(rows: readonly (readonly WrittenCell[])[]): string {
  return rows
    .map((cells, row) => {
      const written = cells.map((cell, column) => cellXml(cell, `${String.fromCharCode(65 + column)}${row + 1}`));
      return `<row r="${row + 1}">${written.join('')}</row>`;
    })
    .join('');
}

function cellXml(cell: WrittenCell, at: string): string {
  if (typeof cell === 'number') return `<c r="${at}"><v>${cell}</v></c>`;
  if (typeof cell === 'boolean') return `<c r="${at}" t="b"><v>${cell ? 1 : 0}</v></c>`;
  if (typeof cell === 'string') return `<c r="${at}" t="inlineStr"><is><t>${escaped(cell)}</t></is></c>`;
  if ('day' in cell) return `<c r="${at}" s="1"><v>${cell.day}</v></c>`;
  return `<c r="${at}"><f>${escaped(cell.formula)}</f>${cell.value === undefined ? '' : `<v>${cell.value}</v>`}</c>`;
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
}
