import {
  allOf,
  type Citation,
  expectFields,
  expectList,
  expectNumber,
  expectOneOf,
  expectQuantity,
  expectText,
  type Finding,
  fail,
  frozen,
  numberIn,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { eachOf } from "../inputs.js";

/** A rate of dry salt for a stretch of pavement temperatures. Plain JSON. */
export interface DeicingStep {
  /** From this pavement temperature on, °F; `null` for "and below". */
  readonly fromF: number | null;
  /** Pounds of salt for 1000 ft2; `null` where salt is not effective. */
  readonly lbPer1000Ft2: number | null;
}

/** A published table of rates by pavement temperature. */
export interface DeicingTable {
  readonly id: string;
  readonly material: string;
  /** From warm to cold. */
  readonly steps: readonly DeicingStep[];
  /** When the table was read, as a year and month. */
  readonly read: string;
  readonly note: string;
  readonly source: Citation;
}

/** What a table says for a pavement temperature. */
export interface DeicingRate {
  readonly type: "deicing-rate";
  readonly version: 1;
  /** `null` where the table says that salt is not effective. */
  readonly rate: Quantity<"mass/area", "product"> | null;
  /** The table that it is from. */
  readonly table: string;
  readonly findings: readonly Finding[];
}

const dupage: Citation = /* @__PURE__ */ frozen({
  title: "Parking lot and sidewalk deicing: application rates by pavement temperature",
  publisher: "DuPage River Salt Creek Workgroup",
  where: "read as an excerpt, not the whole page; title paraphrased",
});
const wisconsin: Citation = /* @__PURE__ */ frozen({
  title: "Winter maintenance: frequently asked questions",
  publisher: "Wisconsin Department of Transportation",
  where: "salt and pavement temperature",
  url: "https://wisconsindot.gov/Pages/doing-bus/local-gov/hwy-mnt/winter-maintenance/faq.aspx",
});
const minnesota: Citation = /* @__PURE__ */ frozen({
  title: "Keeping surfaces clear for winter parking lot and sidewalk maintenance",
  publisher: "Minnesota Stormwater Manual",
  where: "winter maintenance basics",
  url: "https://stormwater.pca.state.mn.us/index.php/Keeping_surfaces_clear_for_winter_parking_lot_and_sidewalk_maintenance",
});
const elmCreek: Citation = /* @__PURE__ */ frozen({
  title: "Smart salting",
  publisher: "Elm Creek Watershed Management Commission, Minnesota",
  where: "tips: less than 4 pounds for 1,000 square feet",
  url: "https://www.elmcreekwatershed.org/smart-salting.html",
});

/** Published rates of dry road salt on walks and lots. Your own road authority and supplier come first. */
export const deicingTables: readonly DeicingTable[] = /* @__PURE__ */ frozen([
  {
    id: "walks and lots, Illinois",
    material: "dry sodium chloride",
    steps: [
      { fromF: 30, lbPer1000Ft2: 3 },
      { fromF: 25, lbPer1000Ft2: 5 },
      { fromF: 20, lbPer1000Ft2: 6 },
      { fromF: 15, lbPer1000Ft2: 7 },
      { fromF: 5, lbPer1000Ft2: 8 },
      { fromF: null, lbPer1000Ft2: null },
    ],
    read: "2026-11",
    note: "The page prints above 30, 25 to 30 and so on: a shared bound takes the warmer step here. Prewetting saves up to a third.",
    source: dupage,
  },
]);

/** Where a source advises against dry salt, °F. */
const tooCold = 15;
/** Where another source sets its upper figure, lb/1000 ft2. */
const enough = 4;

const celsius = (f: number): string => `${quantity(f, "°F").in("°C").toFixed(1)} °C`;

/** Bounds that a source has in °F, in the unit of what was given. */
const bounds = (unit: string, min: number, max?: number) => {
  const own = unit === "°F" ? unit : "°C";
  const hundredths = (f: number): number => 100 * quantity(f, "°F").in(own);
  // inward, so that a bound that is typed back is taken
  const at = { min: Math.ceil(hundredths(min) - 1e-6) / 100, unit: own };
  return max === undefined ? at : { ...at, max: Math.floor(hundredths(max) + 1e-6) / 100 };
};

const stepsOf = (input: unknown, path: string): readonly DeicingStep[] => {
  const steps = eachOf(expectList(input, path, "step", 50), path, (one, i): DeicingStep => {
    const at = `${path}[${i}]`;
    const fields = expectFields(one, ["fromF", "lbPer1000Ft2"], at);
    return allOf({
      fromF: () =>
        fields.fromF === null ? null : expectNumber(fields.fromF, `${at}.fromF`, { min: -60, max: 40 }),
      lbPer1000Ft2: () =>
        fields.lbPer1000Ft2 === null
          ? null
          : expectNumber(fields.lbPer1000Ft2, `${at}.lbPer1000Ft2`, { min: 0, max: 100 }),
    });
  });
  steps.forEach(({ fromF }, i) => {
    const before = steps[i - 1]?.fromF;
    const falls = i === 0 || (typeof before === "number" && (fromF === null || fromF < before));
    if (!falls)
      fail(
        "conflict",
        `${path}[${i}].fromF`,
        fromF,
        "a temperature below that of the step before: warm to cold",
      );
  });
  return steps;
};

const tableOf = (input: unknown): { readonly id: string; readonly steps: readonly DeicingStep[] } => {
  const given: unknown = input === undefined ? deicingTables[0] : input;
  const fields = expectFields(given, ["id", "material", "steps", "read", "note", "source"], "table");
  return allOf({
    id: () => expectText(fields.id, "table.id", "a name"),
    steps: () => stepsOf(fields.steps, "table.steps"),
  });
};

const findingsOf = (f: number, lb: number | null, metric: boolean): Finding[] => {
  const found: Finding[] = [
    {
      code: "deicing/chloride",
      severity: "caution",
      params: {},
      text: "Salt runs off into soil and water and stays. Plow or shovel first, keep it off turf and trees, sweep up what is left over, and follow local rules.",
      source: { ...minnesota },
    },
  ];
  if (f < tooCold || lb === null) {
    found.push({
      code: "deicing/too-cold",
      severity: "warning",
      params: { belowF: tooCold },
      text: `Dry salt melts too slowly below ${metric ? celsius(tooCold) : `${tooCold} °F`} of pavement. Use a wetted or another deicer, or sand for traction.`,
      source: { ...wisconsin },
    });
  }
  if (lb !== null && lb > enough) {
    found.push({
      code: "deicing/sources-differ",
      severity: "note",
      params: { lbPer1000Ft2: enough },
      text: `Watershed districts in Minnesota advise less than ${metric ? `${numberIn({ value: enough, unit: "lb/1000 ft2" }, "g/m2").toFixed(1)} g/m2` : `${enough} lb/1000 ft2`} on walks at any temperature.`,
      source: { ...elmCreek },
    });
  }
  return found;
};

/**
 * The rate of dry salt by pavement temperature, from a published table or your own, ready for a spreader: `spreadRate`,
 * `hopperLoad` and the others take it like a fertilizer rate.
 *
 * Measure the pavement, not the air: it lags behind. Between two steps the table is not interpolated.
 *
 * @param input.pavement - the temperature of the pavement
 * @param input.table - one of {@link deicingTables}, or your own with the same fields; the first where it is left out
 * @param input.prewet - `"a third less"` for prewetted salt, as one source prints at most; `"none"` where it is left out
 * @throws RatewrightError `range` for a pavement above 40 °F (4.4 °C), where nothing freezes; `conflict` for steps out of
 * order; `missing`, `unit/mismatch`, `type`
 * Source: DuPage River Salt Creek Workgroup (rates, excerpt); Minnesota Stormwater Manual and Wisconsin Department of
 * Transportation (no dry salt below 15 °F).
 *
 * @example
 * ```ts
 * import { deicingRate, quantity } from "ratewright";
 * const walk = deicingRate({ pavement: quantity(27, "°F") });
 * walk.rate?.in("lb/1000 ft2"); // => 5
 * walk.rate?.times(quantity(2400, "ft2")).in("lb"); // => 12
 * deicingRate({ pavement: quantity(0, "°F") }).rate; // => null
 * ```
 */
export const deicingRate = (input: {
  readonly pavement: Quantity<"temperature", "none">;
  readonly table?: DeicingTable;
  readonly prewet?: "none" | "a third less";
}): DeicingRate => {
  const fields = expectFields(input, ["pavement", "table", "prewet"]);
  const { pavement, table, prewet } = allOf({
    pavement: () => {
      if (fields.pavement === undefined)
        return fail("missing", "pavement", undefined, "the temperature of the pavement");
      const t = expectQuantity(fields.pavement, { dimension: "temperature", of: "none" }, "pavement");
      const degrees = t.in("°F");
      return degrees >= -60 && degrees <= 40
        ? t
        : outOfRange("pavement", t, bounds(t.unit, -60, 40), "{}: above that nothing freezes to it");
    },
    table: () => tableOf(fields.table),
    prewet: () =>
      fields.prewet === undefined ? "none" : expectOneOf(fields.prewet, ["none", "a third less"], "prewet"),
  });
  const f = pavement.in("°F");
  const step = table.steps.find(({ fromF }) => fromF === null || f >= fromF - 1e-9);
  if (step === undefined) {
    return outOfRange(
      "pavement",
      pavement,
      bounds(pavement.unit, table.steps[table.steps.length - 1]?.fromF ?? -60),
      "{}, which the table covers: its last step can end with null",
    );
  }
  const lb =
    step.lbPer1000Ft2 === null ? null : prewet === "none" ? step.lbPer1000Ft2 : (step.lbPer1000Ft2 * 2) / 3;
  return {
    type: "deicing-rate",
    version: 1,
    rate: lb === null ? null : quantity(lb, "lb/1000 ft2", "product"),
    table: table.id,
    findings: findingsOf(f, lb, pavement.unit !== "°F"),
  };
};
