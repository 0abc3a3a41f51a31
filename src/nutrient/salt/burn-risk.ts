import { exceeds } from "../../numeric/index.js";
import {
  type Citation,
  checks,
  expectQuantity,
  expectRecord,
  type Finding,
  fail,
  type Quantity,
} from "../../quantity/index.js";
import { checkedSaltIndex, type SaltIndex } from "./salt-index.js";

/** What a salt index says of burning, and what it does not. */
export interface BurnRisk {
  readonly type: "burn-risk";
  readonly version: 1;
  readonly findings: readonly Finding[];
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}

const mccarty: Citation = {
  title: "Saline fertiliser index (after McCarty 2001, golf course management text)",
  publisher: "turf agronomy company article",
};
const iowa: Citation = {
  title: "Fertilizer burn study (Agnew and Moore)",
  publisher: "Iowa State University, turf research report, page 69",
  year: 1989,
  where: "abstract",
  url: "https://tic.msu.edu/tgif/fullrecord?recno=18060",
};

const otherRisks =
  "wet leaves, heat, drought, overlaps and watering-in: each changes the risk more than the index (common practice, no source)";

/** The partial salt index above which the turf list calls a source high. */
export const highPartialSaltIndex: 1.5 = 1.5;

/**
 * Whether the partial salt index of a source is among those that a turf text calls high, above 1.5 per
 * unit, with the finding that says so.
 *
 * The index ranks materials at equal nutrient; its sources say that it does not predict injury on a
 * given soil. So no finding means only that the index is not above 1.5. The figure depends on what counts
 * as a unit: state it on the basis of the nutrient that the rate is a rate of.
 *
 * @throws RatewrightError `conflict` for an index on another scale; `type`, `range`
 *
 * Source: list after McCarty 2001 in a turf agronomy company article: above 1.5 per unit is high.
 *
 * @example
 * ```ts
 * import { burnRisk, saltIndex } from "ratewright";
 * const urea = saltIndex({ value: 1.6, scale: "per unit", basis: "N", source: "turf list" });
 * burnRisk(urea).findings.map(({ code }) => code); // => ["salt/high"]
 * const map = saltIndex({ value: 0.5, scale: "per unit", basis: "N+P2O5", source: "turf list" });
 * burnRisk(map).findings; // => []
 * ```
 */
export const burnRisk = (partial: SaltIndex<"per unit">): BurnRisk => {
  const index = checkedSaltIndex(partial, "per unit", "partial");
  const findings: Finding[] = [];
  if (exceeds(index.value, highPartialSaltIndex)) {
    findings.push({
      code: "salt/high",
      severity: "caution",
      path: "partial",
      params: { value: index.value, threshold: highPartialSaltIndex, basis: index.basis },
      text: `A salt index of ${Number(index.value.toPrecision(3))} per unit of ${index.basis} lies above ${highPartialSaltIndex}, from which on a turf text calls it high: leaves burn more easily.`,
      source: mccarty,
    });
  }
  if (index.doubtful !== undefined) {
    findings.push({
      code: "salt/doubtful-figure",
      severity: "note",
      path: "partial.value",
      params: { value: index.value },
      text: `The printed index is doubted: ${index.doubtful}.`,
      source: index.source,
    });
  }
  return {
    type: "burn-risk",
    version: 1,
    findings,
    checked: [`salt index per unit of ${index.basis} against ${highPartialSaltIndex}`],
    notChecked: [otherRisks, "injury on this soil, which the index does not predict"],
  };
};

/** Liquid nitrogen sources of the burn study, from the one that burned most to the one that burned least. */
export const foliarBurnOrder = ["urea", "formaldehyde-urea solution", "triazone solution"] as const;

/** A liquid nitrogen source of the burn study. */
export type FoliarSource = (typeof foliarBurnOrder)[number];

/**
 * What a field study says of burn by liquid nitrogen on the leaf: at 1 lb N per 1000 ft2 in 1, 2 or
 * 4 gal of water, in hot weather, urea burned most at every volume; a formaldehyde-urea solution burned
 * in 1 gal; a triazone-type solution did no appreciable damage.
 *
 * The study speaks of 1 lb N and 1 to 4 gal per 1000 ft2 on irrigated Kentucky bluegrass in July and
 * August. A higher rate, or less water, gets its finding too; a lower rate or more water is listed as
 * not checked.
 *
 * @param input.source - the liquid, or `"other"`
 * @param input.nitrogen - its rate
 * @param input.volume - spray volume
 * @throws RatewrightError `type`, `range`, `unit/mismatch`, `substance/mismatch`
 *
 * Source: Agnew and Moore, "Fertilizer burn study", Iowa State University turf research report 1989, p. 69
 * (abstract).
 *
 * @example
 * ```ts
 * import { foliarBurnRisk, quantity } from "ratewright";
 * const risk = foliarBurnRisk({
 *   source: "urea",
 *   nitrogen: quantity(1, "lb/1000 ft2", "N"),
 *   volume: quantity(2, "gal/1000 ft2", "spray"),
 * });
 * risk.findings.map(({ code }) => code); // => ["salt/foliar-burn"]
 * ```
 */
export const foliarBurnRisk = (input: {
  readonly source: FoliarSource | "other";
  readonly nitrogen: Quantity<"mass/area", "N">;
  readonly volume: Quantity<"volume/area", "spray">;
}): BurnRisk => {
  expectRecord(input);
  const { source } = input;
  const rank = (foliarBurnOrder as readonly string[]).indexOf(source);
  const door = checks();
  door.run(() => {
    if (rank < 0 && source !== "other") {
      fail("type", "source", source, `${foliarBurnOrder.join(", ")} or other`);
    }
  });
  const given = [
    door.run(() =>
      expectQuantity(input.nitrogen, { dimension: "mass/area", of: "N", bound: "positive" }, "nitrogen").in(
        "lb/1000 ft2",
      ),
    ),
    door.run(() =>
      expectQuantity(input.volume, { dimension: "volume/area", of: "spray", bound: "positive" }, "volume").in(
        "gal/1000 ft2",
      ),
    ),
  ];
  door.done();
  const [nitrogen, volume] = given as [number, number];
  // A salt burns more at a higher rate and in less water, so that each result reaches one way only.
  const strong = !exceeds(1, nitrogen);
  const burned = strong && !exceeds(volume, ([4, 1] as const)[rank] ?? 0);
  const unhurt = source === "triazone solution" && !exceeds(nitrogen, 1) && !exceeds(1, volume);
  const findings: Finding[] = [];
  if (burned) {
    findings.push({
      code: "salt/foliar-burn",
      severity: "warning",
      path: "source",
      params: { source, nitrogen, volume },
      text:
        source === "urea"
          ? "At 1 lb N per 1000 ft2 in hot weather urea burned leaves most at 1, 2 and 4 gal per 1000 ft2."
          : "At 1 lb N per 1000 ft2 in hot weather a formaldehyde-urea solution burned leaves in 1 gal per 1000 ft2.",
      source: iowa,
    });
  }
  const known = burned || unhurt;
  const notChecked = [
    otherRisks,
    "another grass, another season: the study had Kentucky bluegrass in July and August",
  ];
  if (!known && rank >= 0) {
    notChecked.unshift(
      "this rate and volume: the study had 1 lb N in 1 to 4 gal per 1000 ft2, and does not say how a formaldehyde-urea solution did in more than 1 gal",
    );
  }
  if (rank < 0) notChecked.unshift("this source: the study had three others");
  return {
    type: "burn-risk",
    version: 1,
    findings,
    checked: known ? ["leaf burn against one field study"] : [],
    notChecked,
  };
};
