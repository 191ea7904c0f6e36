/** What an adapter sees of a row: never the expected value. */
export type Question = {
  /** As it stands in the row: `30`, or several inputs, `V=60 m3, ACH=0.5 1/h`. */
  readonly input: string;
  readonly inputUnit: string;
  /** The unit that the answer must be in. */
  readonly expectedUnit: string;
};

/** `quoted`: looked up in a table of facts that the pages cite. `computed`: everything else. */
export type Answer = {
  readonly kind: 'computed' | 'quoted';
  /** Several where a table offers several: the row holds one of them. */
  readonly values: readonly number[];
};

/** Answers the rows of one quantity through the package; throws where an input is not understood. */
export type Adapter = (question: Question) => Answer;

/** Adapters by the `quantity` that they answer. */
export type Adapters = Readonly<Record<string, Adapter>>;

export const computed = (value: number): Answer => ({ kind: 'computed', values: [value] });
export const quoted = (...values: readonly number[]): Answer => ({ kind: 'quoted', values });
