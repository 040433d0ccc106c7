/** A reader finds the head of a PDF in its first bytes and its end in the last (ISO 32000-2, annex I; readers look that far). */
const lookedAt = 1024;

/** Why a file cannot be read as a PDF, and what to do, as the end of a sentence that begins with the file's name. In: its bytes. */
export function whyUnreadable(pdf: Uint8Array): string {
  if (pdf.length === 0) return 'the file is empty; copy or download it again';
  if (!holds(pdf.subarray(0, lookedAt), '%PDF-')) return 'it is no PDF; name the PDF that was signed, or is to be';
  if (!holds(pdf.subarray(-lookedAt), '%%EOF'))
    return 'the PDF is cut off: its end is missing; copy or download it again';
  return 'the PDF is damaged and cannot be read; copy it again, or ask for it again';
}

function holds(bytes: Uint8Array, text: string): boolean {
  return Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length).includes(text);
}
