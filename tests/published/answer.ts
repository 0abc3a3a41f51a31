import type { Answer } from "./check.js";

/** A printed figure, and the last place to which it is printed. */
export const to = (of: string, printed: number, place: number, more: Partial<Answer> = {}): Answer => ({
  of,
  printed,
  to: place,
  ...more,
});
