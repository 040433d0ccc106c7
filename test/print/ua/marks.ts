import { PDFArray, PDFName, PDFRawStream, PDFStream, decodePDFRawStream, type PDFPageLeaf } from 'pdf-lib';

/** What a page's content says of its marks. */
export interface Marked {
  /** Each piece of marked content, with those around it, outermost first. */
  readonly pieces: readonly {
    readonly tag: string;
    readonly mcid: number | undefined;
    readonly around: readonly string[];
  }[];
  /** Painting operators that stand neither in an artifact nor in content with a number. */
  readonly bare: readonly string[];
}

const painting = new Set(['Tj', 'TJ', "'", '"', 'S', 's', 'f', 'F', 'f*', 'B', 'B*', 'b', 'b*', 'sh', 'Do', 'EI']);

export function readMarks(page: PDFPageLeaf): Marked {
  const pieces: { tag: string; mcid: number | undefined; around: readonly string[] }[] = [];
  const bare: string[] = [];
  const open: { tag: string; mcid: number | undefined }[] = [];
  let operands: string[] = [];
  for (const token of tokensOf(contentOf(page))) {
    if (!/^[A-Za-z'"*]+[0-9*]?$/u.test(token) || token === 'true' || token === 'false' || token === 'null') {
      operands.push(token);
      continue;
    }
    if (token === 'BDC' || token === 'BMC') {
      const number = operands[operands.indexOf('/MCID') + 1];
      const piece = {
        tag: operands[0]?.slice(1) ?? '',
        mcid: operands.includes('/MCID') ? Number(number) : undefined,
      };
      pieces.push({ ...piece, around: open.map(({ tag }) => tag) });
      open.push(piece);
    } else if (token === 'EMC') open.pop();
    else if (painting.has(token) && !open.some(({ tag, mcid }) => tag === 'Artifact' || mcid !== undefined))
      bare.push(token);
    operands = [];
  }
  return { pieces, bare };
}

/** The content of a page as it stands, a byte a letter. */
export function contentOf(page: PDFPageLeaf): string {
  const contents = page.lookup(PDFName.of('Contents'));
  const streams = contents instanceof PDFArray ? contents.asArray().map((one) => page.context.lookup(one)) : [contents];
  return streams
    .filter((stream) => stream instanceof PDFStream)
    .map((stream) =>
      Buffer.from(stream instanceof PDFRawStream ? decodePDFRawStream(stream).decode() : stream.getContents()).toString(
        'latin1',
      ),
    )
    .join('\n');
}

/** Names, numbers and operators of a content stream; what strings hold is left out. */
function* tokensOf(content: string): Generator<string> {
  const plain = /[^\s[\]()<>/]+|\/[^\s[\]()<>/]*|<<|>>|[[\]]/uy;
  for (let at = 0; at < content.length;) {
    const letter = content[at];
    if (letter === '(') {
      at = afterString(content, at);
      continue;
    }
    if (letter === '<' && content[at + 1] !== '<') {
      at = content.indexOf('>', at) + 1;
      continue;
    }
    plain.lastIndex = at;
    const found = plain.exec(content)?.[0];
    if (found !== undefined) yield found;
    at += found?.length ?? 1;
  }
}

function afterString(content: string, from: number): number {
  let depth = 0;
  for (let at = from; at < content.length; at += 1) {
    if (content[at] === '\\') at += 1;
    else if (content[at] === '(') depth += 1;
    else if (content[at] === ')') {
      depth -= 1;
      if (depth === 0) return at + 1;
    }
  }
  return content.length;
}
