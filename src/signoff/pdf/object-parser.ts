import { PDFDict, PDFName, PDFNumber, PDFObjectParser, type PDFContext, type PDFObject } from 'pdf-lib';
import { Malformed, type Allowance } from './malformed.js';

const deepest = 200;

/** pdf-lib's parser of objects, made strict where two readers could see two things in the same bytes: a key that stands twice,
 *  a stream whose length is not where it ends, a number beyond what is exact. */
export class ObjectParser extends PDFObjectParser {
  #depth = 0;
  #length: unknown;
  readonly #allowance: Allowance;

  static at(bytes: Uint8Array, offset: number, context: PDFContext, allowance: Allowance): ObjectParser {
    const parser = new ObjectParser(bytes, context, allowance);
    parser.bytes.moveTo(offset);
    return parser;
  }

  private constructor(bytes: Uint8Array, context: PDFContext, allowance: Allowance) {
    // The stream class is not exported by pdf-lib; its factory makes one.
    const { bytes: stream } = PDFObjectParser.forBytes(bytes, context) as unknown as {
      bytes: ConstructorParameters<typeof PDFObjectParser>[0];
    };
    super(stream, context, false);
    this.#allowance = allowance;
  }

  get offset(): number {
    return this.bytes.offset();
  }

  override parseObject(): PDFObject {
    this.#allowance.step();
    if (this.#depth >= deepest) throw new Malformed('objects are nested too deep');
    this.#depth += 1;
    const object = super.parseObject();
    this.#depth -= 1;
    return object;
  }

  /** `12 0 obj … endobj`: the object and the offset after it. */
  parseIndirect(): {
    readonly number: number;
    readonly generation: number;
    readonly object: PDFObject;
    readonly end: number;
  } {
    const number = this.integer();
    const generation = this.integer();
    this.word('obj');
    const object = this.parseObject();
    this.word('endobj');
    return { number, generation, object, end: this.offset };
  }

  integer(): number {
    this.skipWhitespaceAndComments();
    return this.parseRawInt();
  }

  word(word: string): void {
    if (!this.isWord(word)) throw new Malformed(`'${word}' is missing at byte ${this.offset}`);
  }

  isWord(word: string): boolean {
    this.skipWhitespaceAndComments();
    return this.matchKeyword([...word].map((letter) => letter.charCodeAt(0)));
  }

  protected override parseDict(): PDFDict {
    this.bytes.assertNext(0x3c);
    this.bytes.assertNext(0x3c);
    this.skipWhitespaceAndComments();
    const entries = new Map<PDFName, PDFObject>();
    while (this.bytes.peek() !== 0x3e) {
      const key = this.parseName();
      if (entries.has(key)) throw new Malformed(`the key ${key.toString()} stands twice in one dictionary`);
      entries.set(key, this.parseObject());
      this.skipWhitespaceAndComments();
    }
    this.bytes.assertNext(0x3e);
    this.bytes.assertNext(0x3e);
    // Streams ask for their length next.
    this.#length = entries.get(PDFName.of('Length'));
    return PDFDict.fromMapWithContext(entries, this.context);
  }

  protected override findEndOfStreamFallback(startPos: never): number {
    if (this.#length instanceof PDFNumber) throw new Malformed('a stream does not end where its length says');
    return super.findEndOfStreamFallback(startPos);
  }

  protected override parseRawNumber(): number {
    let text = '';
    while (!this.bytes.done() && text.length <= 64) {
      const byte = this.bytes.peek();
      const isPart = (byte >= 0x30 && byte <= 0x39) || byte === 0x2b || byte === 0x2d || byte === 0x2e;
      if (!isPart) break;
      text += String.fromCharCode(this.bytes.next());
    }
    const number = text === '' ? Number.NaN : Number(text);
    if (!Number.isFinite(number) || Math.abs(number) > Number.MAX_SAFE_INTEGER) {
      throw new Malformed(`there is no usable number before byte ${this.offset}`);
    }
    return number;
  }
}
