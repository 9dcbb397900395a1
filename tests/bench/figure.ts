/** One measured figure of a bench. */
export interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
}
