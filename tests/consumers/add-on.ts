import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/**
 * A package that hands on everything of this one under names of its own, and leaves it to the compiler to write its
 * declarations: each type that shows in a signature must have a name that the package can import.
 */
export const writeAddOn = (folder: string, exported: ReadonlyMap<string, readonly string[]>): void => {
  const sources = join(folder, "add-on");
  mkdirSync(sources);
  for (const [path, names] of exported) {
    const lines = names.flatMap((name) => [
      `import { ${name} as its_${name} } from "${path}";`,
      `export const my_${name} = its_${name};`,
    ]);
    writeFileSync(join(sources, `${path.replaceAll("/", "-")}.mts`), `${lines.join("\n")}\n`);
  }
};
