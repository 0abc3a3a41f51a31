import { describe, expect, it } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import * as soil from "../../../src/soil/index.js";

const meq = <const E extends string>(value: number, name: E) => quantity(value, "meq/L", name as "Na");
const water = {
  Na: meq(4, "Na"),
  Ca: meq(3, "Ca") as never,
  Mg: meq(3, "Mg") as never,
  HCO3: meq(5, "HCO3") as never,
  CO3: meq(2, "CO3") as never,
  conductivity: quantity(1, "dS/m"),
};
const dS = (value: number) => quantity(value, "dS/m");

describe("figures of irrigation water", () => {
  it("name where their equation stands", () => {
    const acid = soil.acidForAlkalinity({
      alkalinity: quantity(3, "meq/L", "CaCO3 equivalent"),
      target: quantity(1, "meq/L", "CaCO3 equivalent"),
      acid: "nitric acid",
      strength: quantity(67, "% w/w"),
      density: quantity(1.4, "g/mL", "product"),
    });
    expect(acid.source).toEqual({
      title: "Adjusting Alkalinity with Acids",
      publisher: "University of Massachusetts Amherst Extension",
      where: "table 1",
      url: "https://ag.umass.edu/greenhouse-floriculture/fact-sheets/adjusting-alkalinity-with-acids",
    });
    expect(soil.adjustedSodiumRatio({ water, method: "pHc", pHc: 7.4 }).source).toEqual({
      title:
        "Alternative method for calculating sodium hazard as a result of bicarbonate, quoting Bower 1968",
      publisher: "University of Wisconsin-Madison, Crop Science Society of America annual meeting",
      year: 2011,
    });
    expect(soil.adjustedSodiumRatio({ water, method: "equilibrium calcium" }).source).toEqual({
      title: "Water quality for agriculture (FAO Irrigation and Drainage Paper 29)",
      publisher: "FAO",
      year: 1985,
      where: "revision 1, table 11, after Suarez 1981, as a public program carries it",
    });
    const leaching = (method: soil.LeachingMethod) =>
      method === "drainage water"
        ? soil.leachingRequirement({ method, water: dS(1.9), drainage: dS(2) })
        : soil.leachingRequirement({ method, water: dS(1.9), soil: dS(0.8) });
    expect(leaching("drainage water").source).toEqual({
      title: "Leaching requirement, quoting the US Bureau of Reclamation 1993",
      publisher: "environmental engineering vocabulary",
    });
    expect(leaching("average root zone").source).toMatchObject({
      title: "Water quality for agriculture (FAO Irrigation and Drainage Paper 29)",
      year: 1985,
    });
    expect(leaching("drainage water").findings[0]?.source).toBe("common practice, no source");
    expect(soil.residualSodiumCarbonate(water).source.url).toBe(
      "http://www.salinitymanagement.org/Salinity%20Management%20Guide/ls/ls_3f3.html",
    );
  });

  it("count carbonate with bicarbonate, and a blend of waters tested alike leaves nothing out", () => {
    expect(soil.residualSodiumCarbonate(water).value.in("meq/L")).toBeCloseTo(5 + 2 - 3 - 3, 9);
    const half = { share: quantity(50, "%"), water };
    expect(soil.blendWaters([half, half]).findings).toEqual([]);
    const lost = soil.blendWaters([half, { share: quantity(50, "%"), water: { Na: water.Na } }]).findings[0];
    expect(lost?.text).toBe("Not every water was tested for Ca, Mg, HCO3, CO3: the blend leaves them out.");
  });
});
