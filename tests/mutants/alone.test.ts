import { expect, test } from "vitest";
import { filesBelow, read } from "../house/sources.js";

const named = (text: string): readonly string[] =>
  [...text.matchAll(/^import \{([^}]*)\} from "vitest";/gm)].flatMap(([, names = ""]) =>
    names
      .split(",")
      .map((name) => name.trim())
      .filter((name) => name !== "" && !name.startsWith("type ")),
  );

test("what the tests of the rooms use of the test runner is there when they run without it: npm run mutants", () => {
  const rooms = filesBelow("src").flatMap((path) => /^src\/(\w+)\/index\.ts$/.exec(path)?.slice(1) ?? []);
  const files = [
    ...rooms.flatMap((room) => filesBelow(`tests/${room}`)).filter((path) => path.endsWith(".test.ts")),
    "tests/without-stack-traces.ts",
  ];
  const used = new Set(files.flatMap((path) => named(read(path))));
  expect([...used]).toEqual(expect.arrayContaining(["expect", "test", "afterAll"]));
  const there = [...read("tests/mutants/alone/vitest.ts").matchAll(/^export const (\w+)/gm)].map(
    ([, name]) => name,
  );
  expect([...used].filter((name) => !there.includes(name))).toEqual([]);
});
