import { fail, RatewrightError, shown } from "../errors/errors.js";
import { expectRecord } from "../errors/expect.js";
import { nearSpelling } from "../errors/near-name.js";
import { isSubstance } from "../substance/substances.js";
import { expectDimension } from "../unit/units-of.js";

const choices: Readonly<Record<string, readonly unknown[]>> = {
  bound: ["positive", "non-negative", "any"],
  decimal: [".", ","],
  measures: ["US", "imperial"],
};

/** Refuses an expectation that nothing could meet: a dimension, a substance or a choice that is none, a field that is not known. */
export const checkExpectation = (input: unknown, at: string, known: readonly string[]): void => {
  const wanted = expectRecord(input, at, 'a record, such as { dimension: "mass" }');
  const strange = Object.keys(wanted).filter((name) => !known.includes(name));
  if (strange.length > 0) {
    throw new RatewrightError(
      strange.map((name) => {
        const suggestion = nearSpelling(name, known);
        return {
          code: "type",
          path: `${at}.${name}`,
          got: `a field ${shown(name)}`,
          expected: `one of the fields ${known.join(", ")}`,
          ...(suggestion !== undefined && { suggestion }),
        };
      }),
    );
  }
  const { dimension, of, path } = wanted;
  if (dimension !== undefined || known.includes("path")) expectDimension(dimension, `${at}.dimension`);
  if (of !== undefined && !isSubstance(of)) {
    fail("substance/unknown", `${at}.of`, of, "a substance, such as N or product");
  }
  if (path !== undefined && typeof path !== "string") fail("type", `${at}.path`, path, "the name of a field");
  for (const name in choices) {
    const words = choices[name] as readonly unknown[];
    const word = wanted[name];
    if (word !== undefined && !words.includes(word))
      fail("type", `${at}.${name}`, word, `one of ${words.map(shown).join(", ")}`);
  }
};
