import { posix } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { floorOf } from "./floors.js";
import { exists, filesBelow, read, rooms, sourceFiles } from "./sources.js";

/** Packages that a subpath of a room may import, with the reason. The rooms themselves import none. */
const packagesOfSubpath: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  "nutrient/blend": { highs: "linear programming, with shadow prices" },
  "plan/fewest-visits": { highs: "integer programming" },
  "teach/problems": {
    "pure-rand/distribution/uniformInt": "whole numbers from a seed, each as likely as the next",
    "pure-rand/generator/mersenne": "the same numbers for a seed on every platform",
  },
  "teach/qti": { "fast-xml-builder": "XML with its escapes" },
  "site/geodesic": { "geographiclib-geodesic": "distances and areas on the ellipsoid" },
};

/** A folder with more files than this holds more than one subject. */
const mostFiles = 20;

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

/**
 * The shelf of a room on which a file lies, `label`; `""` for the ground of a room, the files beside its `index.ts`
 * that all shelves may use.
 */
const shelfOf = (path: string): string => /^src\/[^/]+\/(?:(.+)\/)?[^/]+$/.exec(path)?.[1] ?? "";

/** The doors of a room: what everyone may use, and what only the floors above it may. */
const isDoor = (path: string): boolean => /^src\/[^/]+\/(index|house)\.ts$/.test(path);

/** The source file that a relative specifier names. */
const target = ({ from, specifier }: Import): string =>
  posix.join(posix.dirname(from), specifier).replace(/\.js$/, ".ts");

/** What is known of files that were looked at: most are come by some hundred times. */
const loading = new Map<string, boolean>();

/** Whether a file loads a package, itself or through what it imports. */
const loadsPackage = (path: string): boolean => {
  const known = loading.get(path);
  if (known !== undefined) return known;
  // Until it is looked through: in a circle, which another test refuses, it would be asked again.
  loading.set(path, false);
  const loads =
    exists(path) &&
    importsOf(path, read(path)).some((each) =>
      each.specifier.startsWith(".") ? loadsPackage(target(each)) : true,
    );
  loading.set(path, loads);
  return loads;
};

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
  if (part !== undefined && subpathOf(from) !== part && loadsPackage(to)) {
    return `${where}: a subpath that loads a package is no part of the room`;
  }
  if (room === undefined) {
    return other !== undefined && to === `src/${other}/index.ts`
      ? undefined
      : `${where}: the root may import only the index of a room`;
  }
  if (other === room) {
    if (isDoor(to) && !isDoor(from)) return `${where}: a shelf is below the index of its room`;
    if (shelfOf(from) === "" && shelfOf(to) !== "" && !isDoor(from))
      return `${where}: a file beside the index is the ground of the room, and uses no shelf`;
    return undefined;
  }
  if (other === undefined) return `${where}: a room may not import from the root`;
  const floor = floorOf[room] ?? Number.NaN;
  const otherFloor = floorOf[other] ?? Number.NaN;
  if (!(otherFloor <= floor))
    return `${where}: ${other} (floor ${otherFloor}) is above ${room} (floor ${floor})`;
  if (to === `src/${other}/house.ts` && room !== other) return undefined;
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

  it("has no circle of imports between the shelves of a room", () => {
    for (const room of rooms()) {
      const graph = new Map<string, readonly string[]>();
      for (const path of files.filter((file) => roomOf(file) === room && !isDoor(file))) {
        const from = shelfOf(path);
        const to = importsOf(path, read(path))
          .map(target)
          .filter((each) => roomOf(each) === room)
          .map(shelfOf)
          .filter((each) => each !== from);
        graph.set(from, [...new Set([...(graph.get(from) ?? []), ...to])]);
      }
      expect(circle(graph), room).toBeUndefined();
    }
  });

  it(`has no shelf of more than ${mostFiles} files, and no room with so many beside its index`, () => {
    const counts = new Map<string, number>();
    for (const path of files) {
      const folder = posix.dirname(path);
      counts.set(folder, (counts.get(folder) ?? 0) + 1);
    }
    expect([...counts].filter(([, count]) => count > mostFiles)).toEqual([]);
  });

  it("says in the first line of every index what the room answers", () => {
    expect(rooms().filter((room) => !/^\/\/ [A-Z].+\.\n/.test(read(`src/${room}/index.ts`)))).toEqual([]);
  });

  it("tours every shelf in the index of its room, with a line on what it answers", () => {
    const untold: string[] = [];
    for (const room of rooms()) {
      const index = read(`src/${room}/index.ts`);
      const shelves = new Set(files.filter((path) => roomOf(path) === room).map(shelfOf));
      for (const shelf of shelves) {
        if (shelf === "" || exists(`src/${room}/${shelf}/index.ts`)) continue;
        if (!new RegExp(`^// ${shelf}: .+\\.$`, "m").test(index))
          untold.push(`src/${room}/index.ts: // ${shelf}: ...`);
      }
    }
    expect(untold).toEqual([]);
  });

  it("has its tests on shelves of the same names", () => {
    const lost = filesBelow("tests")
      .map((path) => /^tests\/([^/]+)\/(.+)\/[^/]+$/.exec(path))
      .filter((match) => match !== null && rooms().includes(match[1] as string))
      .filter((match) => !exists(`src/${match?.[1]}/${match?.[2]}`))
      .map((match) => match?.[0]);
    expect(lost).toEqual([]);
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
    expect(faulty("src/nutrient/index.ts", "./blend/index.js")).toMatch(/no part of the room/);
    expect(faulty("src/index.ts", "./nutrient/blend/index.js")).toMatch(/no part of the room/);
    expect(faulty("src/nutrient/label/a.ts", "../index.js")).toMatch(/below the index of its room/);
    expect(faulty("src/nutrient/a.ts", "./label/b.js")).toMatch(/ground of the room/);
    expect(faulty("src/limits/weigh/a.ts", "../../ledger/book/ledger.js")).toMatch(/use src\/ledger\/index/);
    expect(faulty("src/limits/weigh/a.ts", "../../ledger/house.js")).toBe("nothing");
    expect(faulty("src/nutrient/rate/a.ts", "../label/b.js")).toBe("nothing");
    expect(faulty("src/nutrient/blend/a.ts", "highs")).toBe("nothing");
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
