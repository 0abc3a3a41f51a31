import { describe, expect, it } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { amendmentPlanText } from "../../../src/soil/index.js";
import { tellsEach } from "../../tells.js";
import { mg, planOf, report } from "./practice-field.js";

it("the area of the site stands as it was stated, or to the figures that a measurement has", () => {
  const heading = (value: number, unit: "ft2" | "ha") =>
    amendmentPlanText(planOf({ site: { area: quantity(value, unit) } })).split("\n")[0];
  expect(heading(123_456, "ft2")).toBe("Amendment plan: practice field A, 123456 ft2");
  expect(heading(2.54321, "ha")).toBe("Amendment plan: practice field A, 2.54321 ha");
  // A third of a hectare
  expect(heading(1 / 3, "ha")).toBe("Amendment plan: practice field A, 0.3333333 ha");
});

it("a soil that holds enough says so beside the sum, and what was not tested is told once", () => {
  const rich = planOf({
    report: { elements: { ...report.elements, K: mg(400, "K") } },
    conventions: { nutrients: { guideline: "minimum levels, Mehlich 3", list: ["K", "S", "S"] } },
  });
  // 28.09 lb/1000 ft2 of soil by 1e6 for each ppm: 400 ppm are 11.24
  expect(rich.figures.find(({ section }) => section === "nutrients")?.value).toBe(
    "0 lb/1000 ft2 (use 1.5 lb/1000 ft2 + guideline 1.039 lb/1000 ft2 - test 11.24 lb/1000 ft2, as K: the soil holds more)",
  );
  expect(rich.notChecked.filter((line) => line === "S: not in the report")).toHaveLength(1);
});

describe("the text of a plan", () => {
  const plan = planOf();
  const text = (change: object) => () => amendmentPlanText({ ...plan, ...change } as never);
  tellsEach([
    [() => amendmentPlanText(3 as never), "type plan: expected what amendmentPlan gives, got 3"],
    [text({ type: "plan" }), 'type plan.type: expected an amendment plan, got "plan"'],
    [
      text({ site: "", laboratory: 3, area: quantity(0, "ft2"), checked: [""] }),
      'missing plan.site: expected the name of the site, got ""',
      "range plan.area: expected more than zero, got 0 ft2",
      "type plan.laboratory: expected the name of the laboratory, got 3",
      'missing plan.checked[0]: expected a sentence, got ""',
    ],
    [
      text({ figures: [{ section: "roof", of: "", value: "", method: "", source: "" }] }),
      'type plan.figures[0].section: expected one of "soil", "lime", "nutrients", "sodium", "water", got "roof"',
      'missing plan.figures[0].of: expected what it is a figure of, got ""',
      'missing plan.figures[0].value: expected the figure in words, got ""',
      'missing plan.figures[0].method: expected a method, got ""',
    ],
    [
      text({ figures: [{ ...plan.figures[0], source: "" }] }),
      'missing plan.figures[0].source: expected a source, got ""',
    ],
    [
      text({ figures: [{ ...plan.figures[0], source: { publisher: "" } }] }),
      'missing plan.figures[0].source.publisher: expected a publisher, got ""',
    ],
    [
      text({ figures: [{ ...plan.figures[0], source: {} }] }),
      "missing plan.figures[0].source.title: expected a title, got undefined",
    ],
    [
      text({ figures: [{ ...plan.figures[0], source: { title: "Turf", where: "" } }] }),
      'missing plan.figures[0].source.where: expected a place in the source, got ""',
    ],
    [
      text({ findings: [{ text: "Wet." }, { severity: "note", text: "" }] }),
      "missing plan.findings[0].severity: expected a severity, got undefined",
      'missing plan.findings[1].text: expected a sentence, got ""',
    ],
    [text({ cautions: [3] }), "type plan.cautions[0]: expected a caution, got 3"],
    [
      text({ notChecked: Array(1001).fill("Rain.") }),
      "range plan.notChecked: expected 1000 entries or fewer, got a list of 1001",
    ],
    [text({ targets: 3 }), "type plan.targets: expected a list with at least one target, got 3"],
  ]);

  it("is the plan, section by section", () => {
    const short = {
      ...plan,
      figures: [
        { section: "lime", of: "lime", value: "61 lb", method: "by hand", source: "the label" },
        {
          section: "soil",
          of: "capacity",
          value: "8",
          method: "summation",
          source: { publisher: "a county", title: "Turf", year: 1998, where: "page 2" },
        },
      ],
      findings: [{ code: "a/b", severity: "note", params: {}, text: "Wet." }],
      targets: [quantity(3, "lb/1000 ft2", "N")],
      cautions: [{ code: "c/d", text: "Dust.", source: "practice" }],
      checked: ["lime by hand"],
      notChecked: [],
    };
    expect(amendmentPlanText(short as never)).toBe(
      [
        "Amendment plan: practice field A, 80000 ft2",
        "Report of an invented county laboratory, 2026-03-02",
        "",
        "Soil",
        "  - capacity: 8 [summation; a county, Turf, 1998, page 2]",
        "",
        "Lime",
        "  - lime: 61 lb [by hand; the label]",
        "",
        "Targets for the season",
        "  - N: 3 lb/1000 ft2",
        "",
        "Findings",
        "  - note: Wet.",
        "",
        "Cautions",
        "  - Dust.",
        "",
        "Checked",
        "  - lime by hand",
        "",
      ].join("\n"),
    );
  });
});
