import { posix } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { read, rooms, sourceFiles } from "./sources.js";

/** The floor of each room. A room may use the rooms below it, and those beside it through their `index.ts`. */
const floorOf: Readonly<Record<string, number>> = {
  teach: 4,
  plan: 3,
  nutrient: 2,
  spray: 2,
  spread: 2,
  tank: 2,
  interval: 2,
  site: 2,
  stand: 2,
  water: 2,
  soil: 2,
  calendar: 1,
  numeric: 1,
  quantity: 1,
};

/** Packages that a subpath of a room may import, with the reason. The rooms themselves import none. */
const packagesOfSubpath: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  "nutrient/blend": { highs: "linear programming, with shadow prices" },
};

interface Import {
  readonly from: string;
  readonly specifier: string;
}

const importsOf = (path: string, text: string): Import[] =>
  ts
    .preProcessFile(text, true, true)
    .importedFiles.map(({ fileName }) => ({ from: path, specifier: fileName }));

/** The subpath of a room in which a file lies: `nutrient/blend`. */
const subpathOf = (path: string): string | undefined => /^src\/([^/]+\/[^/]+)\//.exec(path)?.[1];

const roomOf = (path: string): string | undefined => /^src\/([^/]+)\//.exec(path)?.[1];

/** The source file that a relative specifier names. */
const target = ({ from, specifier }: Import): string =>
  posix.join(posix.dirname(from), specifier).replace(/\.js$/, ".ts");

/** What is wrong with an import, or nothing. */
const fault = (imported: Import): string | undefined => {
  const { from, specifier } = imported;
  const where = `${from} imports "${specifier}"`;
  const room = roomOf(from);
  if (!specifier.startsWith(".")) {
    const known = packagesOfSubpath[subpathOf(from) ?? ""]?.[specifier];
    return known === undefined ? `${where}: a package that is not in the table` : undefined;
  }
  if (!specifier.endsWith(".js")) return `${where}: write the extension .js`;
  const to = target(imported);
  if (!to.startsWith("src/")) return `${where}: outside of src`;
  const other = roomOf(to);
  const part = subpathOf(to);
  if (part !== undefined && packagesOfSubpath[part] !== undefined && subpathOf(from) !== part) {
    return `${where}: a subpath that loads a package is no part of the room`;
  }
  if (room === undefined) {
    return other !== undefined && to === `src/${other}/index.ts`
      ? undefined
      : `${where}: the root may import only the index of a room`;
  }
  if (other === room) return undefined;
  if (other === undefined) return `${where}: a room may not import from the root`;
  const floor = floorOf[room] ?? Number.NaN;
  const otherFloor = floorOf[other] ?? Number.NaN;
  if (!(otherFloor <= floor))
    return `${where}: ${other} (floor ${otherFloor}) is above ${room} (floor ${floor})`;
  return to === `src/${other}/index.ts` ? undefined : `${where}: use src/${other}/index.ts`;
};

/** The first circle found in a graph of files, as a path that ends where it begins. */
const circle = (graph: ReadonlyMap<string, readonly string[]>): string[] | undefined => {
  const done = new Set<string>();
  const trail: string[] = [];
  const visit = (node: string): string[] | undefined => {
    const at = trail.indexOf(node);
    if (at >= 0) return [...trail.slice(at), node];
    if (done.has(node)) return undefined;
    trail.push(node);
    for (const next of graph.get(node) ?? []) {
      const found = visit(next);
      if (found !== undefined) return found;
    }
    trail.pop();
    done.add(node);
    return undefined;
  };
  for (const node of graph.keys()) {
    const found = visit(node);
    if (found !== undefined) return found;
  }
  return undefined;
};

describe("the floors of the house", () => {
  const files = sourceFiles();
  const imports = files.flatMap((path) => importsOf(path, read(path)));

  it("has a floor for every room", () => {
    expect(rooms().filter((room) => floorOf[room] === undefined)).toEqual([]);
  });

  it("imports only from its own folder, from below, and through index.ts", () => {
    expect(imports.map(fault).filter((text) => text !== undefined)).toEqual([]);
  });

  it("imports only files that are there", () => {
    const relative = imports.filter(({ specifier }) => specifier.startsWith("."));
    const missing = relative.filter((imported) => !files.includes(target(imported)));
    expect(missing).toEqual([]);
  });

  it("has no circle of imports between files", () => {
    const graph = new Map(files.map((path) => [path, importsOf(path, read(path)).map(target)]));
    expect(circle(graph)).toBeUndefined();
  });

  it("would notice each kind of fault", () => {
    const faulty = (from: string, specifier: string): string => fault({ from, specifier }) ?? "nothing";
    expect(faulty("src/nutrient/a.ts", "../quantity/units.js")).toMatch(/use src\/quantity\/index\.ts/);
    expect(faulty("src/nutrient/a.ts", "../site/area.js")).toMatch(/use src\/site\/index\.ts/);
    expect(faulty("src/quantity/a.ts", "../nutrient/index.js")).toMatch(/above/);
    expect(faulty("src/nutrient/a.ts", "../index.js")).toMatch(/root/);
    expect(faulty("src/nutrient/a.ts", "./b")).toMatch(/extension/);
    expect(faulty("src/nutrient/a.ts", "node:fs")).toMatch(/package/);
    expect(faulty("src/index.ts", "./quantity/units.js")).toMatch(/index of a room/);
    expect(faulty("src/nutrient/a.ts", "highs")).toMatch(/package/);
    expect(faulty("src/nutrient/a.ts", "./blend/index.js")).toMatch(/no part of the room/);
    expect(faulty("src/index.ts", "./nutrient/blend/index.js")).toMatch(/no part of the room/);
    expect(faulty("src/nutrient/blend/a.ts", "highs")).toBe("nothing");
    expect(faulty("src/nutrient/blend/a.ts", "../index.js")).toBe("nothing");
    expect(faulty("src/nutrient/a.ts", "../quantity/index.js")).toBe("nothing");
    expect(faulty("src/nutrient/a.ts", "../site/index.js")).toBe("nothing");
    expect(faulty("src/nutrient/a.ts", "./b.js")).toBe("nothing");
    expect(
      importsOf("a", 'import type { A } from "./a.js"; export * from "./b.js"; import("./c.js");'),
    ).toHaveLength(3);
    const graph = new Map([
      ["a", ["b"]],
      ["b", ["c"]],
      ["c", ["b"]],
    ]);
    expect(circle(graph)).toEqual(["b", "c", "b"]);
  });
});
