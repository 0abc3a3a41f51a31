import type { FirstUnits } from "./sheet-units.js";

/** What the trade says in Britain, for a sheet in metric units; its US sheets say it as in the texts. */
const words: readonly (readonly [us: RegExp, uk: string])[] = [
  [/\blabeled\b/g, "labelled"],
  [/\bwalks, drives and gutters\b/g, "paths, drives and drains"],
  [/\ba poison control center\b/g, "the poisons service"],
  [/\bPoison center\b/g, "Poisons service"],
  [/\bauthorize\b/g, "authorise"],
];

/** A text of the sheet itself, never one of a job, in the words of the country that its units speak for. */
export const inWords = (text: string, first: FirstUnits): string =>
  first === "US" ? text : words.reduce((said, [us, uk]) => said.replace(us, uk), text);
