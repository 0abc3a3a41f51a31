// The worked cases name the pages of the rooms that they use, and those pages name the cases.
import { describe, expect, it } from "vitest";
import { exportedFunctions } from "../published/evidence.js";
import { exists, filesBelow, read } from "./sources.js";

const roomOf = new Map(
  [...exportedFunctions()].flatMap(([room, names]) => names.map((name) => [name, room] as const)),
);

/** The rooms whose functions a case imports, those that have a page; the pests stand on the page of the weather. */
const roomsUsed = (markdown: string): string[] => {
  const used = new Set<string>();
  for (const [, names = "", path = ""] of markdown.matchAll(/import \{([^}]*)\} from "ratewright([^"]*)"/g)) {
    for (const name of names.split(",").map((text) => text.trim().replace(/^type /, ""))) {
      const room = path === "" ? roomOf.get(name) : path.split("/")[1];
      if (room !== undefined) used.add(room === "pest" ? "weather" : room);
    }
  }
  return [...used].filter((room) => exists(`docs/${room}.md`)).sort();
};

const cases = filesBelow("docs/cases")
  .filter((path) => path.endsWith(".md") && !path.endsWith("README.md"))
  .map((path) => ({ path, text: read(path), rooms: roomsUsed(read(path)) }));

/** The last line of a case. */
const roomLine = (rooms: readonly string[]): string =>
  `Rooms: ${rooms.map((room) => `[\`${room}\`](../${room}.md)`).join(", ")}.`;

/** The last part of a page of a room. */
const caseList = (room: string): string =>
  [
    "## Worked cases",
    "",
    ...cases
      .filter(({ rooms }) => rooms.includes(room))
      .map(
        ({ path, text }) =>
          `- [${(text.split("\n")[0] ?? "").replace(/^# /, "")}](${path.replace("docs/", "")})`,
      ),
    "",
  ].join("\n");

describe("the worked cases", () => {
  it.each(cases)("$path ends with the rooms that it uses", ({ text, rooms }) => {
    expect(rooms.length).toBeGreaterThan(0);
    expect(text.trimEnd().split("\n").at(-1)).toBe(roomLine(rooms));
  });

  it.each([...new Set(cases.flatMap(({ rooms }) => rooms))])(
    "docs/%s.md ends with the cases that use it",
    (room) => {
      expect(read(`docs/${room}.md`).slice(-caseList(room).length)).toBe(caseList(room));
    },
  );
});
