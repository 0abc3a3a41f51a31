import { fail } from "../../quantity/index.js";
import { expectFertilizer } from "./expect-fertilizer.js";
import type { Fertilizer } from "./fertilizer.js";
import { eachOf, listOf } from "./under-path.js";

const most = 200;

/** Takes a list of materials with ids of their own, or throws. */
export const readMaterials = (
  input: unknown,
  of: (item: unknown) => unknown = (item) => item,
  path = "materials",
): readonly Fertilizer[] => {
  const list = listOf(input, path, "record made by fertilizer", most);
  const places = new Map<string, number>();
  return eachOf(list, path, (item, i) => {
    const material = expectFertilizer(of(item) as Fertilizer, "");
    const twin = places.get(material.id);
    if (twin !== undefined) fail("duplicate", "id", material.id, `another id than ${path}[${twin}]`);
    places.set(material.id, i);
    return material;
  });
};
