import { type Citation, frozen } from "../../quantity/index.js";
import type { Formulation } from "../formulation/formulation.js";

const utah: Citation = /* @__PURE__ */ frozen({
  title: "Using a Jar Test, Utah Pests News",
  publisher: "Utah State University Extension",
  year: 2012,
  where: "winter, list 1-9",
  url: "http://utahpests.usu.edu/htm/utah-pests-news/up-winter-2012/using-a-jar-test/",
});
const arizona: Citation = /* @__PURE__ */ frozen({
  title: "Order in The Tank!",
  publisher: "University of Arizona turf extension",
  year: 1999,
  where: "I. Compatibility test",
  url: "http://turf.arizona.edu/ccps599.htm",
});

/** A sign that a mix failed in the jar. */
export interface JarSign {
  readonly sign: string;
  readonly source: Citation;
}

/** What a failure looks like; any one of them counts. */
export const jarFailures: readonly JarSign[] = /* @__PURE__ */ frozen([
  { sign: "the jar grows warm", source: utah },
  { sign: "layers", source: utah },
  { sign: "clumps or sludge", source: utah },
  { sign: "foam", source: utah },
  { sign: "flakes", source: arizona },
  { sign: "gel", source: arizona },
  { sign: "oil that separates, also as small drops", source: arizona },
]);

/** What a jar test cannot show. */
export const jarCannotShow: readonly string[] = /* @__PURE__ */ frozen([
  "whether one product weakens another: it shows the physical side only",
  "whether the mix hurts the turf",
  "what happens in a mix that stands longer, is colder, has harder water or is agitated less than the jar",
  "whether the labels and the law let the products be mixed",
]);

/** What a pair of jars says, with and without a compatibility agent. */
export interface JarReading {
  readonly withoutAgent: "failed" | "no failure";
  readonly withAgent: "failed" | "no failure";
  readonly decision: string;
  readonly source: Citation;
}

/** How to read a pair of jars. */
export const jarReadings: readonly JarReading[] = /* @__PURE__ */ frozen([
  { withoutAgent: "failed", withAgent: "no failure", decision: "use a compatibility agent", source: arizona },
  { withoutAgent: "failed", withAgent: "failed", decision: "do not tank mix", source: arizona },
  {
    withoutAgent: "no failure",
    withAgent: "no failure",
    decision: "no agent needed by this test",
    source: arizona,
  },
]);

interface Fixed {
  readonly value: number;
  readonly unit: "tsp" | "tbsp" | "g";
}

/** Fixed amounts per pint of water, whatever the rate (Utah State, 2012). */
export const fixedJarAmounts: Readonly<Partial<Record<Formulation, Fixed>>> = /* @__PURE__ */ frozen({
  "water-soluble packet": { value: 1, unit: "tbsp" },
  WP: { value: 1, unit: "tbsp" },
  WG: { value: 1, unit: "tbsp" },
  CS: { value: 1, unit: "tsp" },
  EC: { value: 1, unit: "tsp" },
  SL: { value: 1, unit: "tsp" },
  SP: { value: 1, unit: "tsp" },
  surfactant: { value: 1, unit: "tsp" },
  "liquid fertilizer": { value: 1.1, unit: "g" },
  "dry fertilizer": { value: 1.1, unit: "g" },
});
