import { describe, expect } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import * as soil from "../../../src/soil/index.js";
import { tellsEach } from "../../tells.js";

type Plain = (...input: unknown[]) => unknown;
/** Each function as plain JavaScript calls it. */
const call = soil as unknown as Readonly<Record<keyof typeof soil, Plain>>;
const meq = (value: number) => quantity(value, "meq/100 g");
const percent = (value: number) => quantity(value, "%");
const lb = (value: number, of = "CaCO3 equivalent") => quantity(value, "lb/1000 ft2", of as "S");
const layer = { assumed: "2,000,000 lb/acre" };
const record = (start: string) => expect.stringMatching(new RegExp(`^${start}`)) as unknown as string;

describe("lime", () => {
  const lime = (method: string, more: object) => () => call.limeRequirement({ method, ...more });
  const nc = (more: object) => lime("Mehlich buffer, North Carolina", { pH: 5, targetPH: 6, ...more });
  const targets = "a target that the table has";
  tellsEach([
    ...["Adams-Evans", "SMP buffer, Tri-State", "lime test index"].map(
      (name) =>
        [
          lime(name, {}),
          `type method: expected a method whose equation or table was read in full; for Adams-Evans, Woodruff and the SMP buffer (the lime test index of Ohio, Indiana and Michigan) take the rate that the laboratory printed: limeProductRate takes a rate of CaCO3, limeForRating one of ENM, got "${name}" (say which: Mehlich buffer, North Carolina, Mehlich buffer, Pennsylvania turf, Mehlich buffer, Pennsylvania fields, Sikora buffer, Oregon, buffer pH, Iowa, exchangeable acidity, base saturation, pH buffering)`,
        ] as const,
    ),
    [lime("by eye", {}), record('type method: expected one of "Mehlich buffer, North Carolina", ')],
    [
      nc({}),
      "missing bufferPH: expected the pH in Mehlich's buffer, or acidityPerVolume, the Ac of the report, got undefined",
    ],
    [
      nc({ bufferPH: 6, acidityPerVolume: 2 }),
      "conflict acidityPerVolume: expected a buffer pH or an acidity, not both, got 2",
    ],
    [nc({ acidityPerVolume: 101 }), "range acidityPerVolume: expected 100 or less, got 101"],
    [nc({ acidityPerVolume: -1 }), "range acidityPerVolume: expected 0 or more, got -1"],
    [
      nc({ bufferPH: 6.7 }),
      "range bufferPH: expected 6.6 or less, where the buffer starts: another buffer may be meant, got 6.7",
    ],
    [
      nc({ bufferPH: 6, targetPH: 6.7 }),
      "range targetPH: expected 6.6 or less: the factor has no value beyond it, got 6.7",
    ],
    [
      nc({ bufferPH: 6, targetPH: 4.5 }),
      "conflict targetPH: expected not below the soil pH, which is 5: lime does not lower it, and sulfurApplications is for that, got 4.5",
    ],
    [
      nc({ bufferPH: 9, pH: 2, targetPH: 11, residualCredit: lb(1) }),
      "range pH: expected 3 or more, got 2",
      "range targetPH: expected 10.5 or less, got 11",
      "range bufferPH: expected 8.5 or less, got 9",
      "substance/mismatch residualCredit: expected a quantity of product:standard-lime, got 1 lb/1000 ft2 of CaCO3 equivalent",
    ],
    [
      lime("Mehlich buffer, Pennsylvania fields", { pH: 5, targetPH: 6, acidity: meq(4) }),
      "range targetPH: expected a target that the guide has, got 6 (say which: 7, 6.5)",
    ],
    [
      lime("Mehlich buffer, Pennsylvania turf", { pH: 5, targetPH: 6.2, acidity: meq(4) }),
      `range targetPH: expected ${targets}, got 6.2 (say which: 7, 6.5, 6)`,
    ],
    [
      lime("Mehlich buffer, Pennsylvania turf", { pH: 5, targetPH: 6, acidity: meq(26) }),
      'range acidity: expected 2 to 25.7, which is where the table reaches: beyond it take the rate that the laboratory printed, or the method "exchangeable acidity", got 26',
    ],
    [
      lime("buffer pH, Iowa", { pH: 5, targetPH: 6.5, bufferPH: 5.7 }),
      'range bufferPH: expected 5.8 to 7, which is where the table reaches: beyond it take the rate that the laboratory printed, or the method "exchangeable acidity", got 5.7',
    ],
    [
      lime("exchangeable acidity", { acidity: meq(4), layer, neutralize: 101 }),
      "range neutralize: expected 100 or less, got 101",
    ],
    [
      lime("base saturation", {
        capacity: meq(10),
        baseSaturation: percent(80),
        targetSaturation: percent(70),
        layer,
      }),
      "conflict targetSaturation: expected not below the present base saturation, which is 80 %: lime does not lower it, got 70",
    ],
    [
      lime("base saturation", {
        capacity: meq(10),
        baseSaturation: percent(101),
        targetSaturation: percent(-1),
        layer: 3,
      }),
      "range baseSaturation: expected 100 or less, got 101",
      "range targetSaturation: expected 0 or more, got -1",
      record("type layer: expected a layer: "),
    ],
    [
      lime("pH buffering", { pH: 6, targetPH: 7.1, perUnitPH: meq(2), layer }),
      "range targetPH: expected 7 or less: beyond it carbonates hold the pH, got 7.1",
    ],
    [() => call.limeForSeason({}), "type season: expected a list of nitrogen with its acidity, got a record"],
    [
      () => call.residualLimeCredit({ applied: lb(50), months: -1, soil: "clay" }),
      "range months: expected 0 or more, got -1",
      'type soil: expected one of "mineral", "mineral-organic", "organic", got "clay"',
    ],
  ]);
});
