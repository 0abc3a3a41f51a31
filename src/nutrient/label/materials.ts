import { expectList, fail } from "../../quantity/index.js";
import { expectFertilizer } from "./expect-fertilizer.js";
import type { Fertilizer } from "./fertilizer.js";
import { eachOf } from "./under-path.js";

const most = 200;

/** Takes a list of materials with ids of their own, or throws. */
export const readMaterials = (
  input: unknown,
  of: (item: unknown) => unknown = (item) => item,
  path = "materials",
): readonly Fertilizer[] => {
  const list = expectList(input, path, "record made by fertilizer");
  if (list.length > most) fail("range", path, list, `at most ${most} materials`);
  const places = new Map<string, number>();
  return eachOf(list, path, (item, i) => {
    const material = expectFertilizer(of(item) as Fertilizer, "");
    const twin = places.get(material.id);
    if (twin !== undefined) fail("duplicate", "id", material.id, `another id than ${path}[${twin}]`);
    places.set(material.id, i);
    return material;
  });
};
