import { described } from "../../quantity/house.js";
import {
  allOf,
  type Citation,
  expectFields,
  expectQuantity,
  type Finding,
  fail,
  frozen,
  inUnit,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { expectAir, type Temperature } from "./expect-air.js";

/** A thermometer: what it shows, and how high above the ground it hangs. */
export interface ThermometerReading {
  readonly temperature: Temperature;
  readonly height: Quantity<"length", "none">;
}

/** What two thermometers say of an inversion. Not seeing one says nothing about the air in ten minutes. */
export interface InversionReading {
  readonly type: "inversion-reading";
  readonly version: 1;
  /** Upper less lower, on the scale of the lower thermometer: above zero the air is warmer above. */
  readonly difference: Quantity<"temperature difference", "none">;
  readonly state: "inversion" | "no inversion measured" | "within the error of the thermometers";
  readonly findings: readonly Finding[];
}

const ndsu: Citation = /* @__PURE__ */ frozen({
  title:
    "Air temperature inversions: causes, characteristics and potential effects on pesticide spray drift (AE1705)",
  publisher: "North Dakota State University Extension",
  year: 2024,
});
interface Read {
  readonly celsius: number;
  readonly meters: number;
  readonly unit: string;
}

const readingOf = (input: unknown, path: string): Read => {
  if (input === undefined) return fail("missing", path, input, "a record with temperature and height");
  const fields = expectFields(input, ["temperature", "height"], path);
  const { air, meters } = allOf({
    air: () => expectAir(fields.temperature, `${path}.temperature`, -60, 60),
    meters: () =>
      fields.height === undefined
        ? fail("missing", `${path}.height`, fields.height, "the height above the ground or turf")
        : expectQuantity(
            fields.height,
            { dimension: "length", of: "none", bound: "positive" },
            `${path}.height`,
          ).in("m"),
  });
  return { celsius: air.in("°C"), meters, unit: air.unit };
};

const errorOf = (input: unknown): number | null => {
  const { unit, value } = Object(input) as { readonly unit?: unknown; readonly value?: unknown };
  if ((unit === "°F" || unit === "°C") && typeof value === "number")
    fail("unit/mismatch", "accuracy", input, `a difference: quantity(${value}, "${unit} diff")`);
  return input === undefined
    ? null
    : expectQuantity(
        input,
        { dimension: "temperature difference", of: "none", bound: "non-negative" },
        "accuracy",
      ).in("°C diff");
};

const findingsOf = (
  state: InversionReading["state"],
  accuracy: number | null,
  low: number,
  high: number,
): Finding[] => {
  const found: Finding[] = [];
  if (state === "inversion") {
    found.push({
      code: "inversion/measured",
      severity: "warning",
      params: {},
      text: "Warmer above than below: an inversion. Spray droplets can hang in the cool air and move off target. Many labels prohibit spraying in an inversion.",
      source: ndsu,
    });
  } else {
    found.push({
      code: "inversion/not-seen",
      severity: "caution",
      params: {},
      text: "These two readings show no inversion. It can form within minutes toward sunset: measure again before each load, and watch smoke or dust.",
      source: ndsu,
    });
  }
  if (accuracy === null) {
    found.push({
      code: "inversion/accuracy-not-stated",
      severity: "caution",
      path: "accuracy",
      params: {},
      text: "The accuracy of the thermometers is not stated. A difference smaller than their error says nothing.",
    });
  }
  if (low > 0.5 || high < 2) {
    found.push({
      code: "inversion/heights",
      severity: "caution",
      params: { low, high },
      text: "Put the lower thermometer 6 to 12 in above the surface and the upper one at 8 to 10 ft, both shaded and in moving air.",
      source: ndsu,
    });
  }
  return found;
};

/**
 * Whether two thermometers at two heights show a temperature inversion: air that is warmer above than below, in which
 * fine droplets do not disperse.
 *
 * `difference = T(upper) - T(lower)`; above zero it is an inversion. With a stated accuracy of one thermometer, a
 * difference of up to twice that is `"within the error of the thermometers"`: compare both side by side first.
 *
 * @param input.lower - 6 to 12 in above the turf
 * @param input.upper - 8 to 10 ft above it
 * @param input.accuracy - of one thermometer, such as 0.5 °C
 * @throws RatewrightError `conflict` where the upper one is not higher than the lower one; `missing`, `range`,
 * `unit/mismatch`, `type`
 * Source: North Dakota State University Extension AE1705, rev. 2024 (what it is, and the heights as repeated by
 * others); Kansas State University, Kansas Mesonet (the sign of the difference).
 *
 * @example
 * ```ts
 * import { inversionReading, quantity } from "ratewright";
 * const evening = inversionReading({
 *   lower: { temperature: quantity(61.5, "°F"), height: quantity(8, "in") },
 *   upper: { temperature: quantity(66, "°F"), height: quantity(9, "ft") },
 *   accuracy: quantity(0.9, "°F diff"),
 * });
 * evening.state; // => "inversion"
 * Number(evening.difference.in("°F diff").toFixed(1)); // => 4.5
 * ```
 */
export const inversionReading = (input: {
  readonly lower: ThermometerReading;
  readonly upper: ThermometerReading;
  readonly accuracy?: Quantity<"temperature difference", "none">;
}): InversionReading => {
  const fields = expectFields(input, ["lower", "upper", "accuracy"]);
  const { lower, upper, accuracy } = allOf({
    lower: () => readingOf(fields.lower, "lower"),
    upper: () => readingOf(fields.upper, "upper"),
    accuracy: () => errorOf(fields.accuracy),
  });
  if (upper.meters <= lower.meters) {
    fail(
      "conflict",
      "upper.height",
      described(`${upper.meters} m`),
      `more than lower.height, which is ${lower.meters} m`,
    );
  }
  const difference = upper.celsius - lower.celsius;
  const unsure = accuracy !== null && accuracy > 0 && Math.abs(difference) <= 2 * accuracy + 1e-9;
  const state = unsure
    ? "within the error of the thermometers"
    : difference > 1e-9
      ? "inversion"
      : "no inversion measured";
  return {
    type: "inversion-reading",
    version: 1,
    difference: inUnit(quantity(difference + 0, "°C diff"), lower.unit === "°F" ? "°F diff" : "°C diff"),
    state,
    findings: findingsOf(state, accuracy, lower.meters, upper.meters),
  };
};
