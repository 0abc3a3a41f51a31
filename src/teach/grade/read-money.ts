import { parseQuantity } from "../../quantity/index.js";
import type { QuizProblem } from "../topics/quiz-problem.js";
import { plainUnits } from "./plain-units.js";
import { crossing, type ReadUnit } from "./unit-crossing.js";

/** What stands for money that no problem asks for. */
const otherMoney = /[£¥]|\b(?:gbp|quid|yen|jpy|chf|francs?|pesos?)\b/i;

/** Whether a text names an amount of something else where the money should stand: `5.75 lb`. */
const isAmount = (text: string): boolean => {
  const [first = ""] = text.split(/\/|\b(?:per|an?|the|for|each)\b/i);
  try {
    return first.trim() !== "" && parseQuantity(`1 ${first.trim()}`).value > 0;
  } catch {
    return false;
  }
};

/** What the money is for, in the unit that a text names: `per 1,000 sq ft`, `a pound`, `/ha`. */
const forWhat = (text: string, problem: QuizProblem): string | undefined => {
  const found = /(?:\/|\bper |\ba |\bfor (?:a |each )?)\s*(?:the\b\s*)?(.*)$/i.exec(text)?.[1] ?? "";
  return found === "" ? undefined : plainUnits(`per ${found}`, problem).replace(/^per /, "");
};

/** What stands beside an amount of money. */
export const moneyUnit = (behind: string, currency: string, problem: QuizProblem): ReadUnit => {
  const { answer } = problem;
  const text = behind.replace(/[.,;!?-]+$/, "").trim();
  const unitText = `${currency}${behind}`.trim();
  const wrong = { unit: "wrong", unitText } as const;
  const [, asked] = answer.unit.split("/");
  const cents = /\bcents?\b|\bct\b|¢/i.test(text) ? 0.01 : 1;
  const mine = currency === "" && !/dollars?|usd|euros?|eur|cents?|ct|¢/i.test(text);
  const euros = /€|euros?|eur/i.test(`${currency}${text}`);
  if (otherMoney.test(unitText) || (mine && isAmount(text))) return wrong;
  if (!mine && cents === 1 && euros !== answer.unit.includes("EUR")) return wrong;
  if (
    asked === undefined &&
    /(?:\/|\bper )\s*(?:acres?|ac|ha|lbs?|kg|gal|bags?|tons?|h|hours?|m2|m²|sq|1,?000)\b/i.test(text)
  )
    return wrong;
  const below = asked === undefined ? undefined : forWhat(text, problem);
  if (below === undefined || asked === undefined)
    return { unit: mine ? "not given" : "as asked", inUnit: (value) => value * cents, unitText };
  const across = crossing(below, { ...answer, unit: asked });
  if (across === undefined) return wrong;
  const factor = across(1);
  return {
    unit: Math.abs(factor - 1) < 1e-12 ? "as asked" : "another",
    inUnit: (value) => (value * cents) / factor,
    unitText,
  };
};
