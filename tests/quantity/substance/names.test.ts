import { describe, expect, test } from "vitest";
import {
  isSubstance,
  parseQuantity,
  perSubstance,
  substanceChoices,
  substances,
  suggestSubstance,
  timesSubstance,
} from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

/** What the trade calls a substance; phosphate and potash are the oxides of a label, phosphorus and potassium the elements. */
const names = `
N=nitrogen|Nitrogen|total nitrogen|actual N|total N|actual nitrogen
N:quick=water-soluble nitrogen|quick-release N|quick-release nitrogen|readily available nitrogen|quick nitrogen|quick N|soluble nitrogen|water soluble nitrogen|soluble N|quick release nitrogen|quick release N|N:soluble|n:quick
N:slow=slow-release N|slow-release nitrogen|controlled-release nitrogen|controlled-release N|slow nitrogen|slow N|slow release nitrogen|slow release N|controlled release nitrogen|n:slow
NO3=no3|nitrate ion|nitrate as NO3
NO3-N=nitrate nitrogen|nitrate N|no3-n|nitrate-N|Nitrate-nitrogen|nitrate as N|nitrate (as N)|NO3 as N|NO3 N|N as nitrate
NH4-N=ammonium nitrogen|ammonium N|ammoniacal nitrogen|nh4-n|ammonium-N|ammoniacal-N|NH4 as N|ammonium as N
P=phosphorus|elemental phosphorus|phosphate-P|phosphate as P|PO4-P
P2O5=phosphate|available phosphate|phosphoric acid equivalent|p2o5
K=potassium|elemental potassium|potassium as K
K2O=potash|soluble potash|k2o
Ca=calcium
CaO=calcium oxide|cao
Mg=magnesium
MgO=magnesium oxide|magnesia|mgo
S=sulfur|sulphur|SO4-S|sulfate sulfur|sulfate S|sulfate-S|sulphate-S|sulfate as S|SO4 as S
SO3=so3
SO4=so4|sulfate ion|sulphate ion|sulfate as SO4
Fe=iron
Mn=manganese
Zn=zinc
Cu=copper
B=boron
Mo=molybdenum
Cl=chloride|chlorine
Na=sodium
Ni=nickel
Si=silicon
SiO2=silica
Al=aluminum|aluminium
HCO3=bicarbonate
CO3=carbonate
hardness as CaCO3=hardness|hardness as caco3
CaCO3 equivalent=calcium carbonate equivalent|CCE|caco3 equivalent
product=material|formulated product|formulation|prod|Product
ai=a.i.|active ingredient|active|AI
ae=a.e.|acid equivalent|AE
water=water|h2o|H2O
spray=spray mix|spray solution|finished spray|solution
soil=soil
seed=seeds
pure live seed=PLS|pure live seeds
treated=treated
gross=gross
plan=plan
`
  .trim()
  .split("\n")
  .map((line) => {
    const at = line.indexOf("=");
    return [line.slice(0, at), line.slice(at + 1).split("|")] as const;
  });

describe("the same substance, by every name", () => {
  test.each(names)("%s", (of, all) => {
    expect(parseQuantity(`3 lb ${of}`).of).toBe(of);
    for (const name of all) {
      expect([name, parseQuantity(`3 lb ${name}/acre`).of]).toEqual([name, of]);
      expect([name, parseQuantity(`3 lb of ${name} per acre`).of]).toEqual([name, of]);
      expect([name, suggestSubstance(name)]).toEqual([name, of]);
    }
  });

  test("every substance has its line, and a name for a select box", () => {
    const listed = names.map(([of]) => of);
    expect(substances.filter((of) => of !== "none" && !listed.includes(of))).toEqual([]);
    const shown = substanceChoices().map(({ substance, name }) => `${substance}: ${name}`);
    for (const line of [
      "N: nitrogen",
      "N:quick: n:soluble",
      "P2O5: phosphate",
      "K2O: potash",
      "P: phosphorus",
      "CaO: calcium oxide",
      "product: material",
      "ai: a.i.",
      "seed: seeds",
      "water: water",
    ])
      expect(shown).toContain(line);
    expect(shown.length).toBe(substances.length - 4);
    expect(shown.some((line) => /^(?:none|treated|gross|plan):/.test(line))).toBe(false);
  });

  test("two as a pair", () => {
    expect(suggestSubstance("nitrogen/product")).toBe("N/product");
    expect(suggestSubstance("potash / material")).toBe("K2O/product");
    expect(suggestSubstance("AI/formulation")).toBe("ai/product");
    expect(suggestSubstance("nitrogen/gravel")).toBeUndefined();
    expect(suggestSubstance("gravel/product")).toBeUndefined();
    expect(suggestSubstance("nitrogen/none")).toBeUndefined();
  });
});

describe("what is a substance", () => {
  test.each([
    "N",
    "none",
    "none/N",
    "N/product",
    "product:a",
    "ai:2,4-D",
    "ae:x y",
    "other:WIN/N",
    "degree-days:crabgrass",
    "N/product:feed a",
  ])("%s is one", (text) => {
    expect(isSubstance(text)).toBe(true);
    expect(isSubstance(text)).toBe(true);
  });
  test.each([
    "",
    "n",
    "N/none",
    "N/treated",
    "N/",
    "/N",
    "N/K/P",
    "product:",
    "product: a",
    "product:a:b",
    "product:undefined",
    "product:null",
    "ai:NaN",
    "other:[object Object]",
    "xproduct:a",
    "thing:a",
    `product:${"a".repeat(400)}`,
    3,
    null,
  ])("%o is none", (text) => {
    expect(isSubstance(text)).toBe(false);
  });
  test("an id that only begins as what is not there", () => {
    for (const id of ["undefined-1", "null 2", "NaNo", "nullable"])
      expect(isSubstance(`product:${id}`)).toBe(true);
    expect(isSubstance(`product:${"a".repeat(392)}`)).toBe(true);
    expect(isSubstance(`product:${"a".repeat(393)}`)).toBe(false);
  });
});

describe("the algebra, by hand", () => {
  test.each([
    ["none", "none", "none", "none"],
    ["treated", "gross", "none", "none"],
    ["none", "N", "N", "none/N"],
    ["plan", "N", "N", "none/N"],
    ["N", "none", "N", "N"],
    ["N", "plan", "N", "N"],
    ["N", "N", undefined, "none"],
    ["N", "product", undefined, "N/product"],
    ["N/product", "product", "N", undefined],
    ["N/product", "N", undefined, "none/product"],
    ["product", "N/product", "N", undefined],
    ["N", "N/product", undefined, "product"],
    ["N/product", "N/product", undefined, "none"],
    ["N/product", "product/spray", "N/spray", undefined],
    ["product/spray", "N/product", "N/spray", undefined],
    ["none/N", "N", "none", undefined],
    ["none/N", "N/product", "none/product", undefined],
    ["N/spray", "product/spray", undefined, "N/product"],
    ["N/product", "N/spray", undefined, "spray/product"],
    ["N/product", "product/N", "none", undefined],
  ] as const)("%s and %s", (a, b, times, per) => {
    expect([timesSubstance(a, b), perSubstance(a, b)]).toEqual([times, per]);
  });

  test("what it refuses", () => {
    const told = (call: () => unknown): readonly string[] =>
      problemsOf(call).map(({ code, path, expected, got }) => `${code} | ${path} | ${expected} | ${got}`);
    const both = "type | substance | a substance as text | 3";
    expect(told(() => timesSubstance("N", 3 as never))).toEqual([both]);
    expect(told(() => perSubstance("N", 3 as never))).toEqual([both]);
    expect(told(() => timesSubstance(3 as never, "N"))).toEqual([
      "type | substance | a substance as text | 3",
    ]);
    expect(told(() => perSubstance(3 as never, "N"))).toEqual(["type | substance | a substance as text | 3"]);
  });
});
