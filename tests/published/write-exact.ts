// Writes tests/published/exact.json: which printed figures are met exactly. Run it after published checks were added.
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "../house/sources.js";
import { exactOf } from "./exact.js";
import { allChecks } from "./index.js";

const rooms = Object.entries(allChecks).map(
  ([room, checks]) =>
    `  ${JSON.stringify(room)}: {\n${Object.entries(exactOf(checks))
      .map(([entry, figures]) => `    ${JSON.stringify(entry)}: [${figures.join(", ")}]`)
      .join(",\n")}\n  }`,
);
writeFileSync(join(root, "tests/published/exact.json"), `{\n${rooms.join(",\n")}\n}\n`);
