import { RatewrightError, shown } from "./errors.js";
import { expectText } from "./expect-fields.js";
import { unseen } from "./unseen.js";

/** Letters, digits and marks with one blank between two words. */
const plain = /^[\x21-\x7e]+(?: [\x21-\x7e]+)*$/;

/** A name as it reads: no blanks around it, one between two words, each letter stored in one way. */
const asRead = (name: string): string =>
  name.normalize("NFC").replace(/\s+/g, " ").split(unseen).join("").trim();

/**
 * Takes the name by which something is found again, such as a part of the site, or throws. Two names that read the same
 * must be the same text: with a blank behind it, `"meadow "` would be another part than `"meadow"`, and what went down
 * there would not count.
 *
 * @param expected - what a message asks for
 * @throws RatewrightError `missing`, `type`; the name as it reads is the suggestion
 *
 * @example
 * ```ts
 * import { expectName } from "ratewright";
 * expectName("bowling green", "part", "the name of a part"); // => "bowling green"
 * expectName("bowling green ", "part", "the name of a part"); // => throws type
 * ```
 */
export const expectName = (input: unknown, path: string, expected: string): string => {
  if (typeof input === "string" && plain.test(input)) return input;
  const name = expectText(input, path, expected);
  const read = asRead(name);
  if (name === read) return name;
  throw new RatewrightError([
    {
      code: "type",
      path,
      got: shown(name),
      expected: `${expected}, without spaces around it, double spaces or invisible characters`,
      ...(read === "" ? {} : { suggestion: read }),
    },
  ]);
};
