import { type Dimension, isDimension, parseQuantity, quantityFrom, toldBy } from "../../quantity/index.js";
import type { QuizAnswer } from "../topics/quiz-problem.js";

/** What a unit behind a number is to the unit asked for. */
export interface ReadUnit {
  /** What a number means in the unit asked for; `undefined` where its unit does not fit. */
  readonly inUnit?: (value: number) => number;
  readonly unit: "as asked" | "another" | "wrong" | "not given" | "bare ounces";
  readonly unitText: string;
  /** The unit that was meant, where a key was missed: it is taken where it is the one asked for. */
  readonly slip?: string;
}

/** The dimension of the unit asked for. */
export const dimensionOf = ({ unit }: QuizAnswer): string =>
  toldBy({ quantity: "problem.answer" }, () => quantityFrom({ value: 1, unit, of: "none" }).dimension);

/** How a number of the unit that a text names is one of the unit asked for; `undefined` where it is none. */
export const crossing = (unit: string, answer: QuizAnswer): ((value: number) => number) | undefined => {
  const dimension = dimensionOf(answer);
  if (!isDimension(dimension)) return undefined;
  try {
    const one = parseQuantity(`1 ${unit}`, { dimension: dimension as Dimension });
    // a stone is 14 lb, and fl oz per 100 sq ft are hundredths of fl oz per sq ft
    return (value) =>
      quantityFrom({ value: value * one.value, unit: one.unit, of: "none" }).in(answer.unit as never);
  } catch {
    return undefined;
  }
};
