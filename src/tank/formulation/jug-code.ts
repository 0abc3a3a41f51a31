import { expectFields, fail, outOfRange, type Quantity, quantity } from "../../quantity/index.js";
import { type Formulation, formulations } from "./formulation.js";
import { type CodeScheme, formulationOf } from "./formulation-of.js";

/** What a code on a jug or a bag says: the kind of product, and how much active ingredient is in it. */
export interface JugCode {
  readonly type: "jug-code";
  readonly version: 1;
  readonly formulation: Formulation;
  /**
   * Active ingredient in the product: pounds in a US gallon of a liquid (g/L in an international code), percent by weight of a dry product; left out
   * where the code has no number.
   */
  readonly content?: Quantity<"mass/volume", "ai/product"> | Quantity<"mass/mass", "ai/product">;
}

const inBags: readonly string[] = ["WSB", "WS BAG", "WSPB"];

/**
 * The code behind the name of a US product, read: `4F` is a flowable of 4 lb of active ingredient per gallon, `2EC` an
 * emulsifiable concentrate of 2 lb, `75WDG` a water dispersible granule of 75 % by weight, `50WP` a wettable powder of
 * 50 %, `WSB` a water-soluble bag. The ingredient statement of the label wins: some codes count acid equivalent or
 * round.
 *
 * With `scheme: "international"` the number of a liquid counts grams per liter (`500SC`). Such codes below 100 are refused,
 * for some of them count percent.
 *
 * @param code - as printed, with or without a blank: a number, and the letters that `formulationOf` reads
 * @param options - `scheme` as in `formulationOf`; `"US label"` where left out, whose codes carry such numbers
 * @throws RatewrightError `type` for anything else and for ambiguous letters; `range` for a dry product of more than
 *   100 % and for a liquid of more than 16 lb/gal, which is a number of g/L; `infeasible` for a product that is not mixed
 *
 * Source: University of Illinois, Herbicide Formulations and Calculations (4L: 4 lb per gallon; 90DF: 0.90 lb in a lb).
 *
 * @example
 * ```ts
 * import { jugCode } from "ratewright";
 * const flowable = jugCode("4F");
 * flowable.formulation; // => "SC"
 * flowable.content?.toString(); // => "4 lb/gal of ai/product"
 * jugCode("75WDG").content?.toString(); // => "75 % w/w of ai/product"
 * jugCode("WSB").formulation; // => "water-soluble packet"
 * ```
 */
export const jugCode = (code: string, options: { readonly scheme?: CodeScheme } = {}): JugCode => {
  const { scheme = "US label" } = expectFields(options, ["scheme"], "options") as {
    readonly scheme?: CodeScheme;
  };
  const found =
    typeof code === "string" && code.length <= 20
      ? /^(\d+(?:\.\d+)?)?[ -]?([A-Za-z/ ]+)$/.exec(code.trim())
      : null;
  const [, number, letters = ""] = found ?? [];
  if (found === null) {
    return fail("type", "code", code, 'a code as on a jug, such as "4F", "2EC", "75WDG", "50WP" or "WSB"');
  }
  const formulation = inBags.includes(letters.toUpperCase())
    ? "water-soluble packet"
    : formulationOf(letters, { scheme });
  if (number === undefined) return { type: "jug-code", version: 1, formulation };
  return {
    type: "jug-code",
    version: 1,
    formulation,
    content: contentOf(code, Number(number), formulations[formulation].form === "dry", scheme),
  };
};

/** No liquid product holds more active ingredient than this in a US gallon: it would be twice as heavy as water. */
const mostPounds = 16;

const contentOf = (
  code: string,
  value: number,
  dry: boolean,
  scheme: CodeScheme,
): NonNullable<JugCode["content"]> => {
  if (dry)
    return value > 100
      ? outOfRange("code", code, { max: 100, unit: "%" }, "{} of a dry product")
      : quantity(value, "% w/w", "ai/product");
  if (scheme === "international")
    return value >= 100
      ? quantity(value, "g/L", "ai/product")
      : fail(
          "type",
          "code",
          code,
          "a number of g/L, 100 or more; below that the number may mean percent: use the ingredient statement",
        );
  return value > mostPounds
    ? outOfRange(
        "code",
        code,
        { max: mostPounds, unit: "lb/gal" },
        '{}; if the number means g/L, as in 500SC, say { scheme: "international" }',
      )
    : quantity(value, "lb/gal", "ai/product");
};
