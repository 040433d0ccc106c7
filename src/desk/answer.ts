/** A file that is made when it is asked for; undefined where there is none of its path; or why it cannot be made, in lines. */
export type Answered = Uint8Array | string | { readonly why: string } | undefined;

/** Files beside the pages: by their path, of the records that stand by this number. */
export type BesideDesk = (path: string, number: number) => Promise<Answered>;

/** What the server answers a request with. */
export interface Answer {
  readonly status: number;
  readonly type: string;
  readonly body: string | Uint8Array;
  readonly headers?: Readonly<Record<string, string | readonly string[]>>;
}
