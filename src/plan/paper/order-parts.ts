import { expectFlag } from "../../quantity/index.js";
import { amount, listOf, maybe, number, oneOf, orNull, record, type Shape, text } from "./read-shape.js";

/** Who says so: words, or a citation. */
export const source: Shape<unknown> = (input, path) => {
  if (typeof input === "string") return text(input, path);
  return record({ title: text, publisher: text, year: maybe(number), where: maybe(text), url: maybe(text) })(
    input,
    path,
  );
};

const area = amount("area");

/** The strips that a treatment leaves along edges, and the area that is left. */
export const buffer: Shape<object> = record({
  treatment: text,
  part: text,
  strips: listOf(
    record({
      from: text,
      distance: amount("length"),
      strip: amount("length"),
      stated: amount("length"),
      short: expectFlag,
      source,
    }),
  ),
  area: orNull(record({ part: area, strips: area, left: area, by: oneOf("outline", "length") })),
});
