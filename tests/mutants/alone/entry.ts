// What a room is tested with, as one program that collects its tests: its own folder, its published figures, the figures
// that are transcribed twice, its examples, and the spoilt calls of its functions.
import { filesBelow, rooms, subpaths } from "../../house/sources.js";

/** The text of the program. */
export const entryOf = (room: string): string => {
  const tests = filesBelow(`tests/${room}`).filter((path) => path.endsWith(".test.ts"));
  const doors = ["", ...rooms(), ...subpaths()].map((path, n) => ({
    name: path === "" ? "ratewright" : `ratewright/${path}`,
    as: `door${n}`,
  }));
  const mine = doors.filter(
    ({ name }) => name === `ratewright/${room}` || name.startsWith(`ratewright/${room}/`),
  );
  return [
    'import "./tests/properties.ts";',
    'import fc from "fast-check";',
    ...doors.map(({ name, as }) => `import * as ${as} from "${name}";`),
    'import { addChecks, addExamples } from "./tests/mutants/alone/collect.ts";',
    'import { addWalls } from "./tests/mutants/alone/walls.ts";',
    "fc.configureGlobal({ ...fc.readConfigureGlobal(), endOnFailure: true, numRuns: 25 });",
    "__suite.sourcesLoaded?.();",
    ...tests.map((path) => `__suite.file = "${path}"; require("./${path}");`),
    '__suite.file = "";',
    `const modules = { ${doors.map(({ name, as }) => `"${name}": ${as}`).join(", ")} };`,
    `addChecks("${room}");`,
    `addExamples("${room}", modules);`,
    `addWalls("${room}", modules, { ${mine.map(({ as }) => `...${as}`).join(", ")} });`,
  ].join("\n");
};
