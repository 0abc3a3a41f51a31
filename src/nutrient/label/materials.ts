import { fail } from "../../quantity/index.js";
import { expectFertilizer } from "./expect-fertilizer.js";
import type { Fertilizer } from "./fertilizer.js";

/** Takes a list of materials with ids of their own, or throws. */
export const checkMaterials = (materials: readonly Fertilizer[]): void => {
  if (!Array.isArray(materials) || materials.length === 0) {
    fail("missing", "materials", materials, "at least one record made by fertilizer");
  }
  materials.forEach((material, i) => {
    expectFertilizer(material, `materials[${i}]`);
    const twin = materials.findIndex(({ id }) => id === material.id);
    if (twin < i) fail("duplicate", `materials[${i}].id`, material.id, `another id than materials[${twin}]`);
  });
};
