/** A document, link or store that cannot be taken; the message is for the person at the bench. */
export class SheetError extends Error {
  /** A stable word for tests, such as `future-version`. */
  readonly code: string;

  constructor(code: string, sentence: string) {
    super(sentence);
    this.name = 'SheetError';
    this.code = code;
  }
}
