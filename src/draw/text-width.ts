// Advance widths of Public Sans for the characters from space to tilde, in thousandths of the size. Source: hmtx table of
// the files of Public Sans in fonts/print.
const regular = [
  243, 251, 426, 603, 659, 904, 709, 248, 303, 309, 394, 555, 242, 378, 225, 351, 612, 407, 596, 630, 629, 641, 623,
  601, 648, 625, 226, 240, 546, 555, 546, 521, 831, 710, 671, 689, 694, 621, 594, 733, 766, 283, 389, 682, 578, 886,
  754, 734, 637, 748, 677, 670, 594, 701, 673, 954, 688, 607, 637, 303, 351, 303, 473, 518, 219, 553, 597, 544, 597,
  567, 396, 623, 577, 248, 263, 562, 303, 865, 577, 566, 596, 596, 391, 506, 389, 581, 504, 780, 565, 535, 481, 328,
  263, 332, 568,
];
const semibold = [
  234, 268, 455, 610, 671, 923, 750, 255, 320, 324, 437, 573, 261, 386, 250, 368, 630, 419, 618, 649, 644, 659, 643,
  615, 661, 643, 250, 261, 563, 573, 563, 529, 829, 719, 678, 705, 708, 629, 605, 747, 768, 297, 396, 701, 578, 903,
  770, 749, 645, 762, 687, 682, 606, 714, 690, 962, 704, 640, 655, 322, 368, 322, 479, 537, 243, 560, 603, 546, 603,
  572, 397, 626, 585, 258, 277, 572, 317, 882, 586, 571, 602, 602, 403, 518, 404, 589, 513, 785, 577, 551, 489, 359,
  266, 360, 592,
];
const otherCharacter = 700;

export type Weight = 400 | 600;

/** Width of a line of text at a size, in the size's own unit. Characters outside ASCII count as wide ones. */
export function textWidth(text: string, size: number, weight: Weight = 400): number {
  const widths = weight === 600 ? semibold : regular;
  let thousandths = 0;
  for (const sign of text) thousandths += widths[(sign.codePointAt(0) ?? 0) - 32] ?? otherCharacter;
  return (thousandths * size) / 1000;
}

/** The text, cut with an ellipsis where it is wider than `width`. */
export function fitText(text: string, size: number, weight: Weight, width: number): string {
  if (textWidth(text, size, weight) <= width) return text;
  const signs = [...text];
  while (signs.length > 1 && textWidth(`${signs.join('')}…`, size, weight) > width) signs.pop();
  return `${signs.join('').trimEnd()}…`;
}
