/** Where a command writes, and what day it is: given from outside so that commands can be tested. */
export interface Console {
  out(text: string): void;
  error(text: string): void;
  /** Today as YYYY-MM-DD. */
  today(): string;
  /** Does the reader of `error` understand colour? */
  readonly color: boolean;
}
