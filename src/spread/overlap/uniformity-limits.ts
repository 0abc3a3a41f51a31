import { type Citation, fail, frozen, type Quantity, quantity } from "../../quantity/index.js";

/** A printed limit on the CV of a spread pattern. */
export interface UniformityLimit {
  readonly id: string;
  readonly limit: Quantity<"1", "none">;
  readonly appliesTo: string;
  readonly meaning: string;
  readonly source: Citation;
  /** Whether the figure was read in its source, or is known from memory only. */
  readonly reached: "read" | "from memory";
}

const press: Citation = /* @__PURE__ */ frozen({
  title: "Fertiliser spreader CV reports",
  publisher: "Irish and UK farm press",
});
const newZealand: Citation = /* @__PURE__ */ frozen({
  title: "On-farm fertiliser spreading test project",
  publisher: "LandWISE, New Zealand, citing Lawrence 2007",
  year: 2015,
});

/**
 * Printed limits on the CV, by source. They differ, and none of them is a rule for turf: choose one and name
 * it. A CV in the field is far above that of the pattern.
 */
export const uniformityLimits: readonly UniformityLimit[] = /* @__PURE__ */ frozen([
  {
    id: "nz-nitrogen",
    limit: quantity(15, "%"),
    appliesTo: "nitrogenous fertilizer",
    meaning: "the bout width is the one at which the CV does not pass this",
    source: newZealand,
    reached: "read",
  },
  {
    id: "nz-low-analysis",
    limit: quantity(25, "%"),
    appliesTo: "low-analysis fertilizer",
    meaning: "the bout width is the one at which the CV does not pass this",
    source: newZealand,
    reached: "read",
  },
  {
    id: "australia",
    limit: quantity(15, "%"),
    appliesTo: "fertilizer",
    meaning: "swaths at or below this pass the test scheme",
    source: {
      title: "What do the Australian test-scheme graphs mean?",
      publisher: "Fertilizer Australia",
      where: "figure 1",
    },
    reached: "read",
  },
  {
    id: "ireland-test-hall",
    limit: quantity(5, "%"),
    appliesTo: "fertilizer",
    meaning: "below this only in a test hall, not in the field",
    source: press,
    reached: "read",
  },
  {
    id: "ireland-field",
    limit: quantity(15, "%"),
    appliesTo: "fertilizer",
    meaning: "up to this the source calls a CV in the field acceptable",
    source: press,
    reached: "read",
  },
  {
    id: "ireland-loss",
    limit: quantity(20, "%"),
    appliesTo: "fertilizer",
    meaning: "above this yield and money are lost",
    source: press,
    reached: "read",
  },
  {
    id: "brazil-lime",
    limit: quantity(20, "%"),
    appliesTo: "lime",
    meaning: "the effective width is the one at which the CV comes to this",
    source: {
      title: "Static and kinematic tests for determining spreaders effective width (Maldaner et al.)",
      publisher: "International Society of Precision Agriculture",
      where: "abstract",
    },
    reached: "read",
  },
  {
    id: "en-13739",
    limit: quantity(15, "%"),
    appliesTo: "broadcasters and full-width distributors",
    meaning: "largest CV of the transverse distribution",
    source: { title: "EN 13739", publisher: "CEN" },
    reached: "from memory",
  },
]);

/**
 * One of the printed limits on the CV, by its id in {@link uniformityLimits}.
 *
 * @throws RatewrightError `type` for an id that is not there, with those that are
 *
 * Source: with each limit.
 *
 * @example
 * ```ts
 * import { uniformityLimit } from "ratewright";
 * uniformityLimit("nz-nitrogen").limit.in("%"); // => 15
 * uniformityLimit("brazil-lime").limit.in("%"); // => 20
 * ```
 */
export const uniformityLimit = (id: string): UniformityLimit => {
  const ids = uniformityLimits.map((one) => one.id);
  return uniformityLimits.find((one) => one.id === id) ?? fail("type", "id", id, `one of ${ids.join(", ")}`);
};
