/**
 * What the maths package throws when figures cannot be worked with. The message is one or two
 * plain sentences for the person at the bench: what is wrong, the legal range and why, and how
 * to mend it.
 */
export class MathsError extends Error {
  /** A stable word for tests and logs, such as `rod-too-short`. */
  readonly code: string;
  /** The maths names of the quantities at fault, such as `['rodLength', 'stroke']`. */
  readonly quantities: readonly string[];

  constructor(code: string, quantities: readonly string[], sentence: string) {
    super(sentence);
    this.name = 'MathsError';
    this.code = code;
    this.quantities = quantities;
  }
}
