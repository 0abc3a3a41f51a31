import { expect, test } from "vitest";
import * as spray from "../../src/spray/index.js";
import * as spread from "../../src/spread/index.js";
import * as tank from "../../src/tank/index.js";

/** Every record and list inside a value that is not frozen, by path. */
const open = (value: unknown, path: string): readonly string[] => {
  if (typeof value !== "object" || value === null) return [];
  if (!Object.isFrozen(value)) return [path];
  return Object.entries(value).flatMap(([key, part]) => open(part, `${path}.${key}`));
};

test.each(Object.entries({ tank, spray, spread }))(
  "no exported table of %s can be changed",
  (room, library) => {
    expect(Object.entries(library).flatMap(([name, value]) => open(value, `${room}.${name}`))).toEqual([]);
  },
);
