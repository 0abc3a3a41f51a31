/** A quantity as a job file states it: a `Quantity` fits, and so does what JSON left of one. */
export interface Stated {
  readonly value: number;
  readonly unit: string;
  readonly of?: string;
}
