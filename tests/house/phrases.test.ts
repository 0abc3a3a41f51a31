// Words that read wrong to people of the trade, and what they say instead: they do not come back.
import { describe, expect, it } from "vitest";
import { exists, filesBelow, read } from "./sources.js";

/** Pattern of what is not written, and what the trade says. */
const said: readonly (readonly [pattern: RegExp, instead: string])[] = [
  // Names of fields and functions.
  [/\bfieldCapacity\b(?=\()/, "effectiveFieldCapacity: field capacity is soil moisture"],
  [/\bsprayRate\b/, "applicationVolume"],
  [/\bsprayer\.output\b/, "sprayer.applicationVolume"],
  [/\bclosed dates\b/, "blackout dates"],
  [/\bmeantIf\b/, "appliesIf"],
  [/\bfreesUpOn\b/, "moreCanBeAppliedFrom"],
  [/\bdeadVolume\b/, "residualVolume"],
  [/\blatestUseful\b/, "reapplyBy"],
  [/\blabelRefuses\b/, "labelProhibits"],
  [/\bentryInterval\b/, "restrictedEntryInterval"],
  [/\bheat(Before|After|Schedule)\b/, "degree-days, growing degree days"],
  [/\bjobHeat\b/i, "JobDegreeDays"],
  [/limit\/(broken|violated)/, "limit/exceeded"],
  [/\bsplitRates\b/, "ratesBySource"],
  [/\bremainingNitrogenUnderStatedLimits\b/, "remainingNitrogen"],
  [/\bsprayer\.split\b/, "sprayer.loadSplit"],
  // Texts.
  [/\bby heat\b/i, "in growing degree days"],
  [/\bis said to (last|end|be nearly)\b/, "lasts up to N days by its source: name who says it"],
  [/\bno leave\b/, "does not authorize an application"],
  [/\bfor what is no [a-z]/, "for anything but a"],
  [/\bapply them apart\b/, "apply them separately"],
  [/\bis no diagnosis\b/, "is not a diagnosis"],
  [/[Ss]pray only in the wind/, "spray only within the label's wind-speed limits"],
  [/\bfrees up\b/, "more can be applied from"],
  [/counts as nothing\b/, "counted as zero"],
  [/\ball else that\b/, "everything else"],
  [/\bwhat else (the )?labels?\b/, "everything else in the labels"],
  [/\bare no units\b/, "are not units"],
  [/\bby the votes\b/, "most of the published orders"],
  [/stands with its like/, "placed with similar formulations"],
  [/how dense they are/, "measure by weight: density varies"],
  [/a swallow or\b/, "swallows product"],
  [/service of your country/, "the emergency number or a poison control center"],
  [/[Ff]eel whether\b/, "feel the jar for heat"],
  [/turn it over ten times/, "invert ten times"],
  [/[Nn]ever let the hose hang/, "never let the fill hose touch the mix"],
  [/without drawing in air/, "no vortex"],
  [/says nothing about whether the products mix/, "that does not mean that they mix"],
  [/strongest spray that is stated/, "highest stated concentration"],
  [/, for (it|the job|what it \w+|the label's \w+) (is|states|does)\b/, "because"],
  [/\bhollow coring\b/, "core aeration"],
  [/\blabelled\b/, "labeled"],
];

const pages = ["docs", "examples"].flatMap(filesBelow).filter((path) => /\.(md|ts|json)$/.test(path));
/** What a sheet in metric units says instead of the words of the United States. */
const british = "src/plan/sheet/british-words.ts";
const files = [
  ...filesBelow("src").filter((path) => path.endsWith(".ts") && path !== british),
  // What published sources print, they print in their own words.
  ...pages.filter((path) => path !== "docs/evidence.md"),
  ...["README.md"].filter(exists),
];

/** A text with its broken lines joined, so that a phrase is found across them. */
const joined = (text: string): string => text.replace(/\n\s*(\*|\/\/)? ?/g, " ");

describe("the words of the trade", () => {
  const texts = files.map((path) => [path, joined(read(path))] as const);

  it.each(said.map(([pattern, instead]) => [pattern.source, instead, pattern] as const))(
    "%s stays away: %s",
    (_source, _instead, pattern) => {
      expect(texts.filter(([, text]) => pattern.test(text)).map(([path]) => path)).toEqual([]);
    },
  );

  it("are looked for where they stand", () => {
    expect(files.length).toBeGreaterThan(300);
    const wrapped = joined("/**\n * No amount is given, and it counts\n * as nothing.\n */");
    expect(said.some(([pattern]) => pattern.test(wrapped))).toBe(true);
  });
});
