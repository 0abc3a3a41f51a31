import { expectFields, expectNumber, expectQuantity, fail, type Quantity } from "../../quantity/index.js";
import { type Formulation, isFormulation } from "../formulation/formulation.js";
import { fixedJarAmounts } from "./jar-facts.js";

/**
 * The fixed amounts of a jar test that is not scaled to a rate: so much per pint of water for each kind,
 * whatever the rate. 1 tsp in a pint is 2.1 pt/acre at 25 gal/acre, 1 tbsp 6.3: a hard test for most
 * mixes. Use `jarTest` where the rates are known.
 *
 * @param formulation - one of packet, WP, WG, CS, EC, SL, SP, surfactant and liquid or dry fertilizer
 * @param water - volume of water in the jar, more than zero
 * @returns the amount as printed, by level spoons, or grams for a fertilizer; `undefined` for a kind that the source does not name
 * @throws RatewrightError `type`, `range`, `unit/mismatch`, `substance/mismatch`
 *
 * Source: Utah State University Extension, Using a Jar Test (2012), list 1-9.
 *
 * @example
 * ```ts
 * import { fixedJarAmount, quantity } from "ratewright";
 * fixedJarAmount("WP", quantity(1, "pt", "water")); // => { value: 1, unit: "tbsp" }
 * fixedJarAmount("SL", quantity(1, "qt", "water")); // => { value: 2, unit: "tsp" }
 * ```
 */
export const fixedJarAmount = (
  formulation: Formulation,
  water: Quantity<"volume", "water">,
): { readonly value: number; readonly unit: "tsp" | "tbsp" | "g" } | undefined => {
  if (!isFormulation(formulation)) return fail("type", "formulation", formulation, "a kind of formulation");
  const pints = expectQuantity(water, { dimension: "volume", of: "water", bound: "positive" }, "water").in(
    "pt",
  );
  const per = fixedJarAmounts[formulation];
  return per === undefined ? undefined : { value: expectNumber(per.value * pints, "water"), unit: per.unit };
};

/** What two jars, one with a compatibility agent, say. */
export type TwoJarReading = "no agent needed by this test" | "use a compatibility agent" | "do not tank mix";

/**
 * How to read two jars of one mix, one of them with a compatibility agent: bad without and good with it,
 * use the agent; bad in both, do not mix; good without, no agent is needed. "Good" means no more than that
 * the jar showed none of `jarFailures`.
 *
 * @param jars - whether each jar showed a failure: `failedWithoutAgent`, `failedWithAgent`
 * @throws RatewrightError `type`; `conflict` where only the jar with the agent failed, which the source does
 *   not foresee: repeat the test, for some products do not go together with the agent
 *
 * Source: University of Arizona turf extension, Order in The Tank! (1999), I. Compatibility test.
 *
 * @example
 * ```ts
 * import { twoJarReading } from "ratewright";
 * twoJarReading({ failedWithoutAgent: true, failedWithAgent: false }); // => "use a compatibility agent"
 * twoJarReading({ failedWithoutAgent: true, failedWithAgent: true }); // => "do not tank mix"
 * ```
 */
export const twoJarReading = (jars: {
  readonly failedWithoutAgent: boolean;
  readonly failedWithAgent: boolean;
}): TwoJarReading => {
  expectFields(jars, ["failedWithoutAgent", "failedWithAgent"], "jars");
  for (const name of ["failedWithoutAgent", "failedWithAgent"] as const) {
    if (typeof jars?.[name] !== "boolean") fail("type", name, jars?.[name], "true or false");
  }
  if (jars.failedWithoutAgent) return jars.failedWithAgent ? "do not tank mix" : "use a compatibility agent";
  if (jars.failedWithAgent) {
    fail(
      "conflict",
      "failedWithAgent",
      true,
      "false where the jar without agent did not fail: repeat the test",
    );
  }
  return "no agent needed by this test";
};
