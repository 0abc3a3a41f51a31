import { fail } from "../../quantity/index.js";

/**
 * Takes an argument of an array kernel as the typed array that it reads, or throws with its path and the way to make one.
 *
 * @throws RatewrightError `missing`, `type`
 */
export const expectFloat64Array = (input: unknown, path: string): Float64Array =>
  input instanceof Float64Array
    ? input
    : fail(
        "type",
        path,
        input,
        Array.isArray(input) || input === undefined
          ? "a Float64Array; Float64Array.from(list) makes one of a list"
          : "a Float64Array; Float64Array.from(list) makes one of a list, Object.values(record) a list of what JSON leaves of one",
      );
