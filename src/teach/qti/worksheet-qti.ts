import XMLBuilder from "fast-xml-builder";
import { described } from "../../quantity/house.js";
import { fail } from "../../quantity/index.js";
import type { QuizProblem, Worksheet } from "../topics/quiz-problem.js";
import { quizAt, worksheetAt } from "../topics/read-quiz.js";

/** One file of a QTI package. */
export interface QtiFile {
  readonly name: string;
  readonly xml: string;
}

/** A worksheet in QTI: an item for each problem, and the test that puts them in order. */
export interface QtiWorksheet {
  readonly type: "qti-worksheet";
  readonly version: 1;
  readonly items: readonly QtiFile[];
  readonly test: QtiFile;
}

const namespace = "http://www.imsglobal.org/xsd/imsqti_v2p1";

/** A CommonJS build gets the whole module of the package where an ES build gets its default. */
const builderOf = (given: object): typeof XMLBuilder =>
  "default" in given ? (given.default as typeof XMLBuilder) : XMLBuilder;

const builder = () =>
  new (builderOf(XMLBuilder))({
    ignoreAttributes: false,
    attributeNamePrefix: "@",
    format: true,
    suppressEmptyNode: true,
    suppressBooleanAttributes: false,
  });

const document = (root: Readonly<Record<string, unknown>>): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n${builder().build(root).trim()}\n`;

/** An identifier of QTI: letters, digits, `-`, `_` and `.`, a letter first. */
const identifierOf = ({ topic, level, seed, units }: QuizProblem): string =>
  `rw-${topic.replace(/[^A-Za-z0-9]+/g, "-")}-${level}-${units}-${seed}`;

const itemOf = (problem: QuizProblem): string => {
  const { choices, letter, text, title } = problem;
  return document({
    assessmentItem: {
      "@xmlns": namespace,
      "@identifier": identifierOf(problem),
      "@title": title,
      "@adaptive": "false",
      "@timeDependent": "false",
      responseDeclaration: {
        "@identifier": "RESPONSE",
        "@cardinality": "single",
        "@baseType": "identifier",
        correctResponse: { value: letter },
      },
      outcomeDeclaration: [
        {
          "@identifier": "SCORE",
          "@cardinality": "single",
          "@baseType": "float",
          defaultValue: { value: "0" },
        },
        { "@identifier": "FEEDBACK", "@cardinality": "single", "@baseType": "identifier" },
      ],
      itemBody: {
        p: text,
        choiceInteraction: {
          "@responseIdentifier": "RESPONSE",
          "@shuffle": "false",
          "@maxChoices": "1",
          simpleChoice: choices.map((each) => ({ "@identifier": each.letter, "#text": each.text })),
        },
      },
      responseProcessing: {
        responseCondition: {
          responseIf: {
            match: { variable: { "@identifier": "RESPONSE" }, correct: { "@identifier": "RESPONSE" } },
            setOutcomeValue: { "@identifier": "SCORE", baseValue: { "@baseType": "float", "#text": "1" } },
          },
        },
        setOutcomeValue: { "@identifier": "FEEDBACK", variable: { "@identifier": "RESPONSE" } },
      },
      modalFeedback: choices.map((each) => ({
        "@outcomeIdentifier": "FEEDBACK",
        "@identifier": each.letter,
        "@showHide": "show",
        // a paragraph for each line of the working
        p: feedbackOf(problem, each.letter),
      })),
    },
  });
};

/** What a learner is told who chose a letter: the working, or what went wrong. */
const feedbackOf = (
  { choices, letter, mistakes, steps }: QuizProblem,
  chosen: string,
): string | readonly string[] => {
  if (chosen === letter) return ["Right.", ...steps];
  const { mistake } = choices.find((each) => each.letter === chosen) ?? {};
  return mistakes.find((each) => each.mistake === mistake)?.says ?? "Not yet.";
};

/**
 * A problem as an item of IMS QTI 2.1: one choice of four, the score, and for every choice what to tell the learner.
 *
 * The XML is built by the package fast-xml-builder. Platforms differ in what they take of QTI: the item keeps to the
 * constructs that the standard calls basic, and to feedback.
 *
 * @param problem - as `problem` of `ratewright/teach/problems` makes it, also after JSON
 * @throws RatewrightError `type`, `missing`, `range`
 *
 * Source: IMS Question and Test Interoperability, version 2.1, XML schema (IMS Global Learning Consortium, final release of 31 July 2012).
 *
 * @example
 * ```ts
 * import { problem } from "ratewright/teach/problems";
 * import { problemQti } from "ratewright/teach/qti";
 * const asked = problem({ topic: "spray/speed", level: 1, seed: 4, units: "US" });
 * problemQti(asked).includes(`<value>${asked.letter}</value>`); // => true
 * ```
 */
export const problemQti = (problem: QuizProblem): string =>
  itemOf(withChoices(quizAt(problem, "problem"), "problem"));

/** A problem to choose an answer of: a question of choices has two of them. */
const withChoices = (problem: QuizProblem, path: string): QuizProblem =>
  problem.choices.length > 1
    ? problem
    : fail("missing", `${path}.choices`, described(`${problem.choices.length}`), "two or more choices");

/**
 * A worksheet as IMS QTI 2.1: an item for each problem, and a test with one section that names them in order.
 *
 * @param sheet - as `worksheet` of `ratewright/teach/problems` makes it, also after JSON
 * @throws RatewrightError `type`, `missing`, `range`, `text`, `duplicate` for a problem that is there twice
 *
 * Source: as {@link problemQti}.
 *
 * @example
 * ```ts
 * import { worksheet } from "ratewright/teach/problems";
 * import { worksheetQti } from "ratewright/teach/qti";
 * const sheet = worksheet({ topics: ["spray/speed"], count: 2, seed: 1, units: "US" });
 * const { items, test } = worksheetQti(sheet);
 * items.length; // => 2
 * test.name; // => "assessment.xml"
 * ```
 */
export const worksheetQti = (sheet: Worksheet): QtiWorksheet => {
  const { problems, seed, units } = worksheetAt(sheet, "sheet");
  problems.forEach((each, i) => {
    withChoices(each, `sheet.problems[${i}]`);
    const first = problems.findIndex((other) => identifierOf(other) === identifierOf(each));
    if (first < i)
      fail(
        "duplicate",
        `sheet.problems[${i}]`,
        identifierOf(each),
        `another topic or seed than sheet.problems[${first}] has`,
      );
  });
  const items = problems.map((each): QtiFile => ({ name: `${identifierOf(each)}.xml`, xml: itemOf(each) }));
  const xml = document({
    assessmentTest: {
      "@xmlns": namespace,
      "@identifier": `rw-sheet-${seed}-${units}`,
      "@title": `Turf math, sheet ${seed}`,
      testPart: {
        "@identifier": "part",
        "@navigationMode": "nonlinear",
        "@submissionMode": "individual",
        assessmentSection: {
          "@identifier": "section",
          "@title": "Problems",
          "@visible": "true",
          assessmentItemRef: problems.map((each) => ({
            "@identifier": identifierOf(each),
            "@href": `${identifierOf(each)}.xml`,
          })),
        },
      },
    },
  });
  return { type: "qti-worksheet", version: 1, items, test: { name: "assessment.xml", xml } };
};
