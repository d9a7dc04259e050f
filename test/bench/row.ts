/** One figure of a bench. */
export interface Row {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  /** Against something measured in the same run, so that it means the same on another machine. */
  readonly ratio?: number;
}
