import { describe, expect, test } from "vitest";
import { fertilizer, liquidFertilizer, remainingNitrogen } from "../../../src/nutrient/index.js";
import { tryWorkOrder } from "../../../src/plan/index.js";
import { visitPrice } from "../../../src/price/index.js";
import { expectOneOf, money, quantity, quantityOf, readQuantity } from "../../../src/quantity/index.js";
import { siteArea } from "../../../src/site/index.js";
import { limeRequirement } from "../../../src/soil/index.js";
import { calibrationByRefill } from "../../../src/spray/index.js";
import { formulationOf, loadingOrder } from "../../../src/tank/index.js";
import { problemsOf } from "../../errors.js";

// What somebody writes at the first try, and whether what he is told leads him to the second.

const told = (work: () => unknown) => problemsOf(work).map(({ path, suggestion }) => [path, suggestion]);
const said = (work: () => unknown) => problemsOf(work)[0]?.expected ?? "";

describe("a field by another name", () => {
  const js = (input: object) => input as never;

  test("leads to the one that the function has", () => {
    const refills = [quantity(4, "gal", "spray")];
    const plot = { refills, length: quantity(66, "ft"), width: quantity(66, "ft") };
    expect(told(() => calibrationByRefill(js(plot)))[0]).toEqual(["input.length", "course"]);
    const visit = { manHours: quantity(3, "h"), wage: money(23, "USD").per(quantity(1, "h")), margin: 15 };
    expect(told(() => visitPrice(js(visit)))[0]).toEqual(["input.margin", "aim"]);
    const liquid = { id: "a", nutrients: { N: quantity(3, "lb/gal", "N") } };
    expect(told(() => liquidFertilizer(js(liquid)))[0]).toEqual(["liquidFertilizer.nutrients", "perVolume"]);
    const lime = { method: "Mehlich buffer, Pennsylvania turf", pH: 5.8, targetPH: 6.5, bufferPH: 6.4 };
    expect(told(() => limeRequirement(js(lime)))[0]).toEqual(["input.bufferPH", "acidity"]);
  });

  test("a triangle by its sides is a shape of its own", () => {
    const side = quantity(200, "ft");
    const part = { name: "meadow", shape: "triangle", a: side, b: side, c: side };
    const site = () => siteArea({ parts: [js(part)] });
    expect(told(site)).toEqual([["parts[0].shape", undefined]]);
    expect(said(site)).toContain('shape: "triangle from sides"');
    expect(siteArea({ parts: [{ ...part, shape: "triangle from sides" }] }).net.in("ft2")).toBeCloseTo(
      17_320.5,
      1,
    );
  });
});

describe("a word by another form", () => {
  test("leads to the one that is known", () => {
    const methods = ["spread", "spray"];
    expect(told(() => expectOneOf("spreading", methods, "method"))).toEqual([["method", "spread"]]);
    expect(told(() => expectOneOf("Spray", methods, "method"))).toEqual([["method", "spray"]]);
    expect(told(() => expectOneOf("sprya", methods, "method"))).toEqual([["method", "spray"]]);
    expect(told(() => expectOneOf("spr", methods, "method"))).toEqual([["method", undefined]]);
    expect(told(() => expectOneOf("walk", methods, "method"))).toEqual([["method", undefined]]);
    expect(told(() => expectOneOf("spread".repeat(20), methods, "method"))).toEqual([["method", undefined]]);
    expect(told(() => expectOneOf("wholesome", ["whole", "wholes"], "method"))).toEqual([
      ["method", undefined],
    ]);
  });

  test("what the label or the trade calls a product leads to its kind", () => {
    const kind = (formulation: string) =>
      told(() => loadingOrder({ products: [{ id: "a", formulation: formulation as "WG" }] }))[0]?.[1];
    expect(["WDG", "wetting agent", "Spreader", "antifoam"].map(kind)).toEqual([
      "WG",
      "surfactant",
      "surfactant",
      "defoamer",
    ]);
    // a code of two meanings, and none at all
    expect(["WSP", "QQ"].map(kind)).toEqual([undefined, undefined]);
  });
});

describe("a figure", () => {
  test("slow nitrogen is in percent of the product, and a share of the nitrogen is told so", () => {
    const slow = (share: object) => () =>
      fertilizer({ id: "a", analysis: "24-0-11", slowNitrogen: share as never });
    for (const share of [
      quantity(50, "%"),
      quantity(50, "% w/w"),
      quantity(50, "% w/w", "N:slow/N" as "none"),
    ]) {
      expect(said(slow(share))).toContain("percent of the product");
      expect(said(slow(share))).toContain('quantity(12, "% w/w", "N:slow/product")');
    }
    expect(said(slow(quantity(-1, "% w/w", "N:slow/product")))).toBe("zero or more");
    expect(slow(quantity(12, "% w/w", "N:slow/product"))().slowNitrogen?.value).toBe(12);
  });

  test("ppm says of what, a number with the other sign how to read it", () => {
    expect(said(() => quantity(42, "ppm" as "ppm w/w"))).toContain("ppm w/w, ppm v/v or mg/L");
    const read = (value: string, decimal?: ",") =>
      readQuantity({ value, unit: "m2" }, { dimension: "area", ...(decimal && { decimal }) });
    expect(read("12.400,5").problems[0]?.expected).toContain('the option decimal: ","');
    expect(read("12.400,5", ",").value?.value).toBe(12_400.5);
    expect(read("1.2.400,5").problems[0]?.expected).not.toContain("option");
    expect(read("12,40,5").problems[0]?.expected).not.toContain("option");
  });

  test("stuff of one's own has a written form", () => {
    const lava = () => quantity(3, "kg", "lava" as "none");
    expect(said(lava)).toContain("other:sand for one of your own");
    expect(quantity(3, "kg", "other:lava").of).toBe("other:lava");
  });
});

describe("the place", () => {
  test("an empty path names the fields by their own names", () => {
    expect(told(() => fertilizer({ id: "", analysis: "24-0" }, "")).map(([path]) => path)).toEqual([
      "id",
      "analysis",
    ]);
    expect(told(() => fertilizer({ id: "a", analysis: "24-0" }, "products[2]"))[0]?.[0]).toBe(
      "products[2].analysis",
    );
  });

  test("a quantity where a record is due is told at a field that the record has", () => {
    const most = quantity(3, "lb/1000 ft2", "N");
    const left = () => remainingNitrogen({ on: "2026-09-20", applied: [], caps: { perYear: most as never } });
    expect(told(left)).toEqual([["caps.perYear.amount", undefined]]);
    expect(said(left)).toContain("write { amount: ... }");
  });

  test("a quantity that is made without a path has one", () => {
    expect(told(() => quantityOf(1, "bucket", "N"))).toEqual([["quantity", undefined]]);
  });
});

describe("a code of several meanings", () => {
  test("is told with the written form that has one", () => {
    expect(said(() => formulationOf("WG"))).toContain('formulationOf("WG", { scheme: "international" })');
    expect(formulationOf("WG", { scheme: "international" })).toBe("WG");
    const product = (formulation: unknown) =>
      tryWorkOrder({ products: [{ id: "a", form: "dry", formulation }] }).problems?.filter(({ path }) =>
        path.startsWith("products[0].formulation"),
      );
    const [first] = product("WG") ?? [];
    expect(first?.expected).toContain('{ "code": "WG", "scheme": "international" }');
    expect(first?.choices?.length).toBe(2);
    expect(product({ code: "WG", scheme: "international" })).toEqual([]);
    expect(product("wetting agent")?.[0]?.suggestion).toBe("surfactant");
  });
});
