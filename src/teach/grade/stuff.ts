import type { AnswerSubstance } from "../topics/topic.js";

/** What a learner may say that an amount is of; `"other"` for sand and the like, which says nothing wrong. */
export type SaidStuff = AnswerSubstance | "other";

/** The words for it, the longer ones first. */
const words: readonly (readonly [SaidStuff, RegExp])[] = [
  ["pure live seed", /\b(?:pure live seed|pls)\b/i],
  ["ai", /\b(?:active ingredient|active substance|active|a\.i\.|ai)(?![a-z])/i],
  ["N", /\b(?:actual )?(?:nitrogen|n)\b/i],
  ["P2O5", /\b(?:actual )?(?:p2o5|phosphate)\b/i],
  ["K2O", /\b(?:actual )?(?:k2o|potash)\b/i],
  ["P", /\b(?:elemental |actual )?(?:phosphoro?us|p)\b/i],
  ["K", /\b(?:elemental |actual )?(?:potassium|k)\b/i],
  [
    "product",
    /\b(?:(?:granular )?products?|(?:granular )?fert(?:ili[sz]ers?)?|granules|granular|material|concentrate|chemical|feed|bulk product)\b|\b\d{1,2}-\d{1,2}-\d{1,2}\b/i,
  ],
  ["seed", /\b(?:bulk )?seed\b/i],
  ["water", /\bwater\b/i],
  ["spray", /\b(?:finished )?(?:spray(?: mix| solution)?|mix(?:ture)?|solution)\b/i],
  [
    "other",
    /\b(?:sand|lime|limestone|compost|ground|turf|grass|topdressing|plugs?|plants?|speed|pressure|depth|area)\b/i,
  ],
];

/** What a text says an amount is of, and the text without it. */
export const stuffIn = (text: string): { readonly stuff: SaidStuff | undefined; readonly rest: string } => {
  for (const [stuff, pattern] of words) {
    const found = pattern.exec(text);
    if (found !== null) {
      const before = text.slice(0, found.index).replace(/\s*\b(?:of|of the|the)\s*$/i, " ");
      return {
        stuff,
        rest: `${before} ${text.slice(found.index + found[0].length)}`.replace(/\s+/g, " ").trim(),
      };
    }
  }
  return { stuff: undefined, rest: text };
};

/** Whether what is said fits what is asked: a rate of spray is told in water as often as not. */
export const isStuffAsked = (said: SaidStuff, asked: AnswerSubstance): boolean => {
  const carrier = ["spray", "water"];
  if (asked === "none" || said === "other" || said === asked) return true;
  if (asked === "pure live seed" && said === "seed") return false;
  return carrier.includes(said) && carrier.includes(asked);
};
