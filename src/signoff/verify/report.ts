/** What a PDF proves. */
export interface PdfReport {
  /** `whole`: each signature holds, and nothing but signatures and empty fields filled in came after the first.
   *  `altered`: it is not what was signed. `unproven`: a signature is of a kind that is not checked here.
   *  `unsigned`: there is no signature. `unreadable`: it is not a PDF, or it is cut off, encrypted or too much work. */
  readonly verdict: 'whole' | 'altered' | 'unproven' | 'unsigned' | 'unreadable';
  /** In the order in which they were made. */
  readonly signatures: readonly SignatureReport[];
  /** Names of the signature fields that nobody has signed, in the newest state of the PDF. */
  readonly toSign: readonly string[];
  /** Why the verdict is not `whole`, the gravest first, in words. */
  readonly problems: readonly string[];
  /** Files that the PDF carries. */
  readonly attachments: readonly { readonly name: string; readonly size: number; readonly sha256: string }[];
  /** The attached `book.json`, as it stands in the newest state of the PDF. */
  readonly book?: { readonly bytes: Uint8Array; readonly sha256: string };
  /** The attached `change-order.json`, likewise, of a PDF that carries no book. */
  readonly changeOrder?: { readonly bytes: Uint8Array; readonly sha256: string };
  /** The attached `handout.json`, of a trade's handout. */
  readonly handout?: Uint8Array;
}

export interface SignatureReport {
  /** Name of its field. */
  readonly field: string;
  readonly state: 'whole' | 'altered' | 'unproven';
  /** Name in the certificate; empty when there is none. */
  readonly signer: string;
  /** What the signature dictionary says: who, why and where, by the signer's own word. */
  readonly says: { readonly name?: string; readonly reason?: string; readonly location?: string };
  /** When, by the signer's own clock. */
  readonly at?: Date;
  /** The signed bytes are all of the file up to the end of its revision. */
  readonly coversRevision: boolean;
  /** The bytes are those that were signed. */
  readonly digestMatches: boolean;
  /** The signature was made with the certificate's key. */
  readonly signatureVerifies: boolean;
  readonly certificate?: SignerCertificate;
  /** What an authority said of its time, when it carries that. */
  readonly timeStamp?: TimeStamp;
  /** `given-root`: it is, or leads to, a certificate that the caller trusts. */
  readonly trust: 'given-root' | 'self-signed' | 'unknown';
  /** What was added after it, oldest first. */
  readonly after: readonly LaterChange[];
  readonly problems: readonly string[];
}

/** A time-stamp over a signature (RFC 3161): it was there at that time. */
export interface TimeStamp {
  /** By the authority's clock; absent when it cannot be read. */
  readonly at?: Date;
  readonly authority?: SignerCertificate;
  readonly trust: SignatureReport['trust'];
  /** Why it proves nothing, in words. */
  readonly problem?: string;
}

export interface SignerCertificate {
  readonly subject: string;
  readonly issuer: string;
  /** Hexadecimal. */
  readonly serial: string;
  readonly from: Date;
  readonly to: Date;
  /** SHA-256 of the certificate's DER, in hexadecimal. */
  readonly fingerprint: string;
  readonly validAtSigning: boolean;
}

export type LaterChange =
  | { readonly kind: 'signature' | 'filled'; readonly fields: readonly string[] }
  | { readonly kind: 'validation-data' | 'document-properties' }
  /** Numbers of objects that nothing leads to. */
  | { readonly kind: 'loose-objects'; readonly numbers: string }
  | { readonly kind: 'altered'; readonly why: string };

/** What came after a signature, in words for a person. */
export function describeChange(change: LaterChange): string {
  switch (change.kind) {
    case 'signature':
      return `signed in ${change.fields.join(', ')}`;
    case 'filled':
      return `filled in: ${change.fields.join(', ')}`;
    case 'validation-data':
      return 'data to check certificates added';
    case 'document-properties':
      return 'document properties changed';
    case 'loose-objects':
      return `objects that nothing leads to added: ${change.numbers}`;
    case 'altered':
      return `altered: ${change.why}`;
  }
}
