import { describe, expect, test } from "vitest";
import { rememberedSaltIndexes, tabulatedSaltIndex, weightSaltIndexes } from "../../src/nutrient/index.js";

describe("the salt index per unit", () => {
  test.each([
    ["ammonia", 82],
    ["ammonium nitrate", 34],
    ["urea", 46],
    ["diammonium phosphate", 18 + 46],
    ["monoammonium phosphate", 11 + 55],
    ["triple superphosphate", 45],
    ["single superphosphate", 20],
    ["monopotassium phosphate", 52 + 34.5],
    ["potassium chloride", 60],
    ["potassium nitrate", 13 + 44],
    ["potassium sulfate", 50],
    ["sodium nitrate", 16.5],
  ])("as remembered, of %s is that by weight over the %d percent of the grade", (material, percent) => {
    const remembered = tabulatedSaltIndex(rememberedSaltIndexes, material).value;
    const read = tabulatedSaltIndex(weightSaltIndexes, material).value / percent;
    expect(Math.abs(remembered / read - 1)).toBeLessThan(0.005);
  });
});
