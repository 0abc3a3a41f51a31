import { described } from "../../quantity/house.js";
import { allOf, expectFields, expectFlag, expectText, outOfRange } from "../../quantity/index.js";
import { printable } from "../topics/printable.js";

/** What a sheet shows beside its problems. */
export interface SheetOptions {
  /** The heading; `Turf math` and the number of the sheet where left out. */
  readonly title?: string;
  /** Whether each problem shows four answers to choose from; it does not where left out. */
  readonly choices?: boolean;
  /** Whether the key with the working follows on pages of its own; it does where left out. */
  readonly key?: boolean;
}

const longestTitle = 120;

/** The options of a sheet, read. */
export const sheetOptions = (input: unknown, seed: number): Required<SheetOptions> => {
  const fields = expectFields(input ?? {}, ["title", "choices", "key"], "options");
  return allOf({
    title: () => {
      if (fields.title === undefined) return `Turf math, sheet ${seed}`;
      const title = expectText(fields.title, "options.title", "a heading");
      return title.length <= longestTitle
        ? printable(title, "options.title")
        : outOfRange("options.title", described(`${title.length} characters`), {
            max: longestTitle,
            count: "characters",
          });
    },
    choices: () => (fields.choices === undefined ? false : expectFlag(fields.choices, "options.choices")),
    key: () => (fields.key === undefined ? true : expectFlag(fields.key, "options.key")),
  });
};
