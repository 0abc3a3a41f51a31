import {
  allOf,
  type Citation,
  expectFields,
  expectQuantity,
  type Finding,
  fail,
  frozen,
  type Quantity,
} from "../quantity/index.js";
import { finiteFigure } from "./read.js";

/** How far an active ingredient may leach, by two of its properties. A ranking, not a forecast for a site. */
export interface LeachingScore {
  readonly type: "leaching-score";
  readonly version: 1;
  readonly score: number;
  readonly potential: "extremely low" | "low" | "moderate" | "high";
  readonly findings: readonly Finding[];
}

const npic: Citation = /* @__PURE__ */ frozen({
  title: "Groundwater ubiquity score (GUS)",
  publisher: "National Pesticide Information Center",
  where: "equation and classes, after D. I. Gustafson 1989",
  url: "http://npic.orst.edu/envir/gus.html",
});
const fairway: Citation = /* @__PURE__ */ frozen({
  title: "Groundwater ubiquity score (GUS) index",
  publisher: "FAIRWAY information system",
  url: "https://fairway-is.eu/index.php/adwi/162-groundwater-ubiquity-score-gus-index",
});

/**
 * The groundwater ubiquity score: how much an active ingredient tends to move toward groundwater, from its half-life in soil
 * and its sorption to organic carbon.
 *
 * `GUS = log10(half-life) (4 - log10(Koc))`, half-life in days, `Koc` in mL/g
 *
 * Below 0 extremely low, to 1.8 low, to 2.8 moderate, above that high; 1.8 and 2.8 themselves count as moderate. The score
 * ignores weather, soil and depth to groundwater. Published half-lives of one ingredient differ by a factor of ten: score the
 * range, not one value. Read the label for groundwater advisories.
 *
 * @param input.halfLife - in soil; a field half-life, as the author used
 * @param input.koc - sorption coefficient by organic carbon, in mL/g (the same as L/kg)
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `type`
 * Source: National Pesticide Information Center, after D. I. Gustafson, Environmental Toxicology and Chemistry 8 (1989),
 * 339-357.
 *
 * @example
 * ```ts
 * import { leachingScore, quantity } from "ratewright";
 * const found = leachingScore({ halfLife: quantity(60, "d"), koc: quantity(100, "mL/g") });
 * Number(found.score.toFixed(2)); // => 3.56
 * found.potential; // => "high"
 * ```
 */
export const leachingScore = (input: {
  readonly halfLife: Quantity<"time", "none">;
  readonly koc: Quantity<"volume/mass", "none">;
}): LeachingScore => {
  const fields = expectFields(input, ["halfLife", "koc"]);
  const { days, koc } = allOf({
    days: () => {
      if (fields.halfLife === undefined)
        return fail("missing", "halfLife", undefined, "the half-life in soil");
      return expectQuantity(
        fields.halfLife,
        { dimension: "time", of: "none", bound: "positive" },
        "halfLife",
      ).in("d");
    },
    koc: () => {
      if (fields.koc === undefined) return fail("missing", "koc", undefined, "Koc, in mL/g");
      return expectQuantity(
        fields.koc,
        { dimension: "volume/mass", of: "none", bound: "positive" },
        "koc",
      ).in("mL/g");
    },
  });
  // A half-life far below a second comes to no day at all.
  const score = finiteFigure(
    Math.log10(days) * (4 - Math.log10(koc)) + 0,
    days === 0 ? "halfLife" : "koc",
    days === 0 ? fields.halfLife : fields.koc,
    days === 0 ? "a half-life that can be measured" : "a Koc that can be measured",
  );
  const findings: Finding[] = [
    {
      code: "leaching/not-a-forecast",
      severity: "note",
      params: {},
      text: "The score ranks ingredients. It leaves out soil, weather, rate and the depth to groundwater.",
      source: fairway,
    },
  ];
  if (days < 1 && koc > 10_000) {
    // Both factors are negative: their product says the opposite of what both properties say.
    findings.push({
      code: "leaching/score-turns",
      severity: "warning",
      params: { days, koc },
      text: "Half-life below 1 day and Koc above 10,000 mL/g: the equation turns its sign here and scores too high. Such an ingredient hardly leaches.",
      source: npic,
    });
  }
  return { type: "leaching-score", version: 1, score, potential: classOf(score), findings };
};

const classOf = (score: number): LeachingScore["potential"] =>
  score < -1e-9 ? "extremely low" : score < 1.8 - 1e-9 ? "low" : score <= 2.8 + 1e-9 ? "moderate" : "high";
