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
  itsName = "",
): readonly Fertilizer[] => {
  const list = listOf(input, path, "record made by fertilizer", most);
  const places = new Map<string, number>();
  // An item is read at its whole path, so that nothing is to be put before that of a problem.
  const whole = (): string => "";
  return eachOf(list, whole, (item, i) => {
    const at = `${path}[${i}]${itsName === "" ? "" : `.${itsName}`}`;
    const material = expectFertilizer(of(item) as Fertilizer, at);
    const twin = places.get(material.id);
    if (twin !== undefined) fail("duplicate", `${at}.id`, material.id, `another id than ${path}[${twin}]`);
    places.set(material.id, i);
    return material;
  });
};
