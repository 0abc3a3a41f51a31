import { describe, expect, test } from "vitest";
import {
  ledger,
  type ResistanceCodeList,
  resistanceCodeLists,
  resistanceRotation,
} from "../../../src/ledger/index.js";
import { complaints } from "../../errors.js";
import { expectRefusals } from "../../refusals.js";

const year = { from: "2026-01-01", to: "2026-12-31" } as const;
const put = (change: object) => () => resistanceRotation({ ...year, ...change } as never);
const own: ResistanceCodeList = {
  type: "resistance-code-list",
  version: 1,
  scheme: "FRAC",
  source: "label (invented)",
  reached: "stated by the caller",
  groups: { "99": ["azoxystrobin"] },
  multiSite: [],
};
const list = (change: object) => put({ codeLists: [own, { ...own, ...change }] });

test("a rotation says what it needs", () => {
  expectRefusals([
    [put({ from: undefined }), "missing", "from", /^a date, YYYY-MM-DD/],
    [put({ to: "x" }), "date", "to", /./],
    [put({ to: "2025-12-31" }), "date", "to", /^a date not earlier than 2026-01-01/],
    [put({ on: "x" }), "date", "on", /./],
    [put({ part: "" }), "missing", "part", /^the name of a part/],
    [put({ ledger: 3 }), "type", "ledger", /^a ledger/],
    [put({ planned: 3 }), "type", "planned", /application/],
    [put({ planned: Array(20_001) }), "range", "planned", /"max":20000/],
    [put({ planned: [3] }), "type", "planned[0]", /./],
    [put({ planned: [{ date: "x", actives: ["a"] }] }), "date", "planned[0].date", /./],
    [put({ planned: [{ date: "2026-05-01", actives: [] }] }), "missing", "planned[0].actives", /name/],
    [
      put({ planned: [{ date: "2026-05-01", actives: ["a", 3] }] }),
      "type",
      "planned[0].actives[1]",
      /^a name/,
    ],
    [
      put({ planned: [{ date: "2026-05-01", actives: ["a"], parts: [] }] }),
      "missing",
      "planned[0].parts",
      /name/,
    ],
    [
      put({ planned: [{ date: "2026-05-01", actives: ["a"], parts: ["b", ""] }] }),
      "missing",
      "planned[0].parts[1]",
      /^the name of a part/,
    ],
    [put({ planned: [{ date: "2026-05-01", actives: ["a"], part: "b" }] }), "type", "planned[0].part", /./],
  ]);
  expect(put({ planned: [], to: "2026-01-01" })().groups).toEqual([]);
  expect(complaints(put({ from: 3, to: 4, part: "" }))).toHaveLength(3);
});

test("a list of codes says what is wrong with it", () => {
  expectRefusals([
    [put({ codeLists: [] }), "missing", "codeLists", /list of groups/],
    [put({ codeLists: Array(21).fill(own) }), "range", "codeLists", /"max":20/],
    [
      put({ codeLists: [3] }),
      "type",
      "codeLists[0]",
      /^a list of groups, such as one of resistanceCodeLists/,
    ],
    [list({ scheme: "" }), "missing", "codeLists[1].scheme", /^whose numbers these are, such as FRAC/],
    [list({ source: "" }), "missing", "codeLists[1].source", /./],
    [list({ reached: "heard" }), "type", "codeLists[1].reached", /read.*from memory.*stated by the caller/],
    [list({ groups: 3 }), "type", "codeLists[1].groups", /^names of active ingredients by group/],
    [list({ groups: { "3": [] } }), "missing", "codeLists[1].groups.3", /common name/],
    [list({ groups: { "3": ["a", 3] } }), "type", "codeLists[1].groups.3[1]", /^a name/],
    [
      list({ groups: { "3": Array(5001).fill("a") } }),
      "range",
      "codeLists[1].groups.3",
      /"max":5000,"count":"names"/,
    ],
    [list({ multiSite: "3" }), "type", "codeLists[1].multiSite", /common name/],
    [list({ fuss: 1 }), "type", "codeLists[1].fuss", /./],
  ]);
  expect(put({ codeLists: Array(20).fill(own) })).not.toThrow();
  const { reached: _, multiSite: __, ...bare } = own;
  const { groups } = put({
    codeLists: [bare],
    ledger: ledger([{ id: "a", date: "2026-05-01", activeIngredient: " Azoxystrobin" }]),
  })();
  expect(groups).toMatchObject([
    { group: "99", reached: "stated by the caller", source: "label (invented)" },
  ]);
});

describe("the lists that are shipped, a second time from memory", () => {
  /** Group by group, as the committees number them. */
  const groups: Readonly<Record<string, string>> = {
    FRAC: "1 thiophanate-methyl; 2 iprodione vinclozolin; 3 mefentrifluconazole metconazole myclobutanil propiconazole tebuconazole triadimefon triticonazole; 4 mefenoxam metalaxyl metalaxyl-M; 7 boscalid fluopyram flutolanil fluxapyroxad isofetamid penthiopyrad pydiflumetofen; 11 azoxystrobin fluoxastrobin mandestrobin pyraclostrobin trifloxystrobin; 12 fludioxonil; 14 etridiazole quintozene; 21 cyazofamid; 28 propamocarb; 29 fluazinam; M03 mancozeb thiram; M04 captan; M05 chlorothalonil; P07 fosetyl fosetyl-aluminium",
    HRAC: "1 fenoxaprop-P-ethyl fluazifop-P-butyl sethoxydim; 2 foramsulfuron halosulfuron-methyl metsulfuron-methyl penoxsulam trifloxysulfuron; 3 dithiopyr pendimethalin prodiamine propyzamide trifluralin; 4 2,4-D dicamba fluroxypyr MCPA mecoprop mecoprop-P triclopyr; 5 amicarbazone atrazine simazine; 6 bentazone; 9 glyphosate; 10 glufosinate; 14 carfentrazone-ethyl oxadiazon sulfentrazone; 15 dimethenamid-P ethofumesate S-metolachlor; 18 asulam; 27 mesotrione topramezone; 29 indaziflam isoxaben",
    IRAC: "1A carbaryl; 1B acephate chlorpyrifos trichlorfon; 2B fipronil; 3A beta-cyfluthrin bifenthrin deltamethrin lambda-cyhalothrin; 4A clothianidin dinotefuran imidacloprid thiamethoxam; 5 spinosad; 6 abamectin; 22A indoxacarb; 28 chlorantraniliprole cyantraniliprole tetraniliprole",
  };

  /** Groups with a name that no text has that was read. */
  const remembered: Readonly<Record<string, string>> = {
    FRAC: "14 21 28 29",
    HRAC: "1 2 3 4 5 14 29",
    IRAC: "",
  };

  test.each(Object.entries(groups))("%s: what goes down is counted in its group", (scheme, text) => {
    const named = text.split("; ").map((row) => row.split(" "));
    const lists = resistanceCodeLists.filter((one) => one.scheme === scheme);
    const shipped = [...new Set(lists.flatMap((one) => Object.keys(one.groups)))];
    expect(shipped.sort()).toEqual(named.map(([group]) => group).sort());
    for (const [group = "", ...names] of named) {
      const {
        groups: one,
        multiSite,
        withoutCode,
      } = put({
        planned: names.map((name, i) => ({ date: `2026-05-${10 + i}`, actives: [name] })),
      })();
      expect(withoutCode).toEqual([]);
      expect([...one, ...multiSite].filter((use) => use.scheme === scheme)).toMatchObject([
        {
          group,
          actives: names.map((name) => name.toLowerCase()).sort(),
          applications: names.length,
          // A single name that is remembered is enough
          reached: remembered[scheme]?.split(" ").includes(group) ? "from memory" : "read",
        },
      ]);
      // Groups of many sites stand apart
      expect(multiSite.length > 0).toBe(/^M0/.test(group));
    }
    expect(lists.map(({ reached }) => reached)).toEqual(
      remembered[scheme] ? ["read", "from memory"] : ["read"],
    );
    for (const { reached, source } of lists) {
      expect(source).toMatch(/Verify on the label$/);
      expect(/^from memory of the /.test(String(source))).toBe(reached === "from memory");
    }
  });

  test.each([
    ["quintozene then etridiazole", ["quintozene", "etridiazole"], "from memory"],
    ["etridiazole then quintozene", ["etridiazole", "quintozene"], "from memory"],
    ["quintozene alone", ["quintozene"], "read"],
  ])("%s: a group is as good as the weakest of what was used", (_, names, reached) => {
    const { groups: found } = put({
      planned: names.map((name, i) => ({ date: `2026-05-1${i}`, actives: [name] })),
    })();
    expect(found).toMatchObject([{ group: "14", reached }]);
  });
});

describe("how often and how close together", () => {
  const season = ledger([
    { id: "a", date: "2026-05-04", activeIngredient: "propiconazole" },
    { id: "b", date: "2026-05-18", activeIngredient: "azoxystrobin and propiconazole" },
    { id: "c", date: "2026-06-01", activeIngredient: "azoxystrobin" },
    { id: "d", date: "2026-06-15", activeIngredient: "azoxystrobin" },
    { id: "e", date: "2026-06-15", parts: ["north"], activeIngredient: "propiconazole" },
    { id: "f", date: "2026-07-01", note: "something" },
    { id: "g", date: "2026-07-02", analysis: "24-0-11" },
  ]);
  const of = (change: object, group: string) =>
    put({ ledger: season, ...change })().groups.find((use) => use.group === group);

  test("a mixture counts in both groups, and alone in neither", () => {
    expect(of({ on: "2026-06-20" }, "11")).toMatchObject({
      applications: 3,
      alone: 2,
      dates: ["2026-05-18", "2026-06-01", "2026-06-15"],
      longestRun: { applications: 3, from: "2026-05-18", to: "2026-06-15" },
      daysSince: 5,
      share: { value: 75 },
    });
    expect(of({}, "3")).toMatchObject({
      applications: 2,
      alone: 1,
      longestRun: { applications: 2, from: "2026-05-04", to: "2026-05-18" },
      daysSince: 227,
    });
  });

  test("days count up to the day itself, and not before it", () => {
    expect(of({ on: "2026-05-18" }, "11")?.daysSince).toBe(0);
    expect(of({ on: "2026-05-17" }, "11")?.daysSince).toBeNull();
    expect(of({ from: "2026-06-01", to: "2026-06-01" }, "11")?.applications).toBe(1);
  });

  test("a part has its own; without one, what names parts is told", () => {
    expect(of({ part: "north" }, "3")?.applications).toBe(3);
    expect(put({ ledger: season })().notCounted).toEqual(["f", "e"]);
    expect(put({ ledger: season, part: "north" })().notCounted).toEqual(["f"]);
    expect(put({ ledger: season, part: "south" })().part).toBe("south");
  });

  test("the most used group comes first, then by name", () => {
    expect(put({ ledger: season })().groups.map(({ group }) => group)).toEqual(["11", "3"]);
    const even = put({
      planned: [{ date: "2026-05-01", actives: ["cyazofamid", "boscalid", "bifenthrin", "prodiamine"] }],
    })();
    expect(even.groups.map(({ scheme, group }) => `${scheme} ${group}`)).toEqual([
      "FRAC 21",
      "FRAC 7",
      "HRAC 3",
      "IRAC 3A",
    ]);
  });
});
