/** A stable UID: the same house number, kind and id give the same one in every export, different ones never meet. Its
 *  right side is a name in `.invalid`, which nobody can own (RFC 6761), made from the house number. */
export function makeUid(houseNumber: string, kind: 'decide' | 'milestone', id: string): string {
  return `${kind}.${plain(id)}@house-${plain(houseNumber).replaceAll('/', '_2f_')}.bookmatch.invalid`;
}

/** Letters, digits, `-` and `/` stay; any other character becomes its code point in hex between `_`, so that no two
 *  texts become one. */
function plain(text: string): string {
  return [...text]
    .map((each) => (/^[A-Za-z0-9/-]$/.test(each) ? each : `_${each.codePointAt(0)?.toString(16)}_`))
    .join('');
}
