import { numberIn } from "../../quantity/index.js";
import { expectWithin } from "./expect-within.js";

/** Takes the speed of a machine over the ground, or throws: aircraft that spray fly at some 150 mi/h (from memory). */
export const expectTravelSpeed = <V extends { readonly value: number; readonly unit: string }>(
  speed: V,
  path: string,
): V => {
  const [unit, max] = /^(mi|ft|yd|in)\//.test(speed.unit)
    ? (["mi/h", 250] as const)
    : (["km/h", 400] as const);
  return expectWithin(
    speed,
    numberIn(speed, unit),
    path,
    { max, unit },
    "a speed of {}; 1 mi/h is 88 ft/min",
  );
};
