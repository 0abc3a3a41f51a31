import { describe, expect, test } from "vitest";
import {
  type CodeScheme,
  codeMeanings,
  type Formulation,
  formulationOf,
  formulations,
  internationalCodes,
  jugCode,
  labelAbbreviations,
} from "../../../src/tank/index.js";
import { problemsOf } from "../../errors.js";

// What letters on a label stand for, written down a second time: by the words that each list prints.

/** The kind that goes into the tank for each printed meaning; `undefined` for what is never mixed. */
const kindOf: Readonly<Record<string, Formulation | "unclear" | undefined>> = {
  "aqueous suspension": "SC",
  "aqueous flowable": "SC",
  flowable: "SC",
  "flowable suspension": "SC",
  "flowable microencapsulated": "CS",
  microencapsulated: "CS",
  "dry flowable": "WG",
  "dry flowable, which is a water dispersible granule": "WG",
  "water dispersible granules": "WG",
  "water-dispersible granules": "WG",
  "wettable granules": "WG",
  "emulsifiable concentrate": "EC",
  "wettable powder": "WP",
  "soluble powder": "SP",
  "soluble granule": "SG",
  "water-soluble liquid": "SL",
  dust: undefined,
  granular: undefined,
  granule: undefined,
  granules: undefined,
  aerosol: undefined,
  bait: undefined,
  pellets: undefined,
  "ready to use": undefined,
  "ultra low volume": undefined,
  concentrate: "unclear",
  "liquid concentrate": "unclear",
  "soluble concentrate or spray concentrate": "unclear",
  "spray concentrate": "unclear",
  slurry: "unclear",
  "wettable, soluble powder": "unclear",
  "water-soluble liquid concentrate; some makers use it for an emulsifiable concentrate": "unclear",
  "flowable or liquid": "unclear",
  gel: "unclear",
  solution: "unclear",
  "water-soluble powder or packet": "unclear",
};

const readAs = (code: string, scheme?: CodeScheme): string => {
  let kind = "";
  const [problem] = problemsOf(() => {
    kind = formulationOf(code, scheme === undefined ? {} : { scheme });
  });
  return problem === undefined ? kind : problem.code === "infeasible" ? "not mixed" : "unclear";
};

describe("the lists of the United States", () => {
  const rows = (
    [
      ["New England", "New England"],
      ["Washington", "Washington"],
      ["study list", "US label"],
    ] as const
  ).flatMap(([list, scheme]) =>
    Object.entries(labelAbbreviations[list].meanings).map(
      ([code, meaning]) => [code, scheme, meaning] as const,
    ),
  );

  test.each(rows)("%s by the list of %s is a %s", (code, scheme, meaning) => {
    expect(Object.keys(kindOf)).toContain(meaning);
    expect(readAs(code, scheme)).toBe(kindOf[meaning] ?? "not mixed");
    // Lower case is the same letters, and blanks around them are no part of the code.
    expect(readAs(` ${code.toLowerCase()} `, scheme)).toBe(kindOf[meaning] ?? "not mixed");
  });

  test("a refusal of what is not mixed says what it is", () => {
    for (const [code, scheme, meaning] of rows) {
      if (kindOf[meaning] !== undefined || readAs(code, scheme) !== "not mixed") continue;
      const [problem] = problemsOf(() => formulationOf(code, { scheme }));
      expect(problem?.expected).toMatch(/^a product that is mixed into the tank; this is "/);
      const said = /"(.*)"/.exec(problem?.expected ?? "")?.[1] ?? "";
      expect(meaning.replace("-", " ").slice(0, 4)).toBe(said.slice(0, 4));
    }
  });

  test.each([
    ["M", "CS"],
    ["ME", "CS"],
    ["DG", "WG"],
    ["ASC", "SC"],
    ["SE", "SE"],
    ["EW", "EW"],
    ["OD", "OD"],
    ["SL", "SL"],
    ["AMS", "conditioner"],
    ["NIS", "surfactant"],
    ["COC", "oil adjuvant"],
    ["MSO", "oil adjuvant"],
  ] as const)("%s on a US label is %s", (code, kind) => {
    expect(readAs(code, "US label")).toBe(kind);
  });
});

describe("the international list", () => {
  test("kinds that are mixed bear its names", () => {
    // The catalogue's own words, but for what the trade of this country calls the same kind.
    for (const [code, name] of Object.entries(internationalCodes)) {
      const known = Object.entries(formulations).find(([kind]) => kind === code)?.[1];
      if (known !== undefined) expect(known.name.split(" (")[0]).toBe(name.split(" (")[0]);
    }
  });

  test("what is in a bag that dissolves is a packet, written with a hyphen, a blank or neither", () => {
    for (const code of ["WP-SB", "WP SB", "WPSB", "SP-SB"])
      expect(readAs(code, "international")).toBe("water-soluble packet");
    expect(readAs("QQ-SB", "international")).toBe("unclear");
    expect(readAs("AWP-SB", "international")).toBe("unclear");
    expect(readAs("WP-SBX", "international")).toBe("unclear");
  });
});

describe("letters with several meanings", () => {
  const choices: Readonly<Record<string, readonly string[]>> = {
    SL: ["soluble concentrate (international)", "slurry (New England)"],
    SC: ["suspension concentrate (international)", "soluble or spray concentrate (New England, Washington)"],
    ME: ["micro-emulsion (international)", "microencapsulated (US label)"],
    WG: ["water dispersible granule (international)", "wettable granule (New England)"],
    WSP: ["packet (US label)", "water-soluble powder (US label)", "wettable powder (New England)"],
    S: ["solution (US label)", "soluble powder (Washington)", "soluble concentrate (New England)"],
    L: ["water-soluble liquid (Washington)", "flowable (US label)", "some makers (Washington)"],
    LC: ["water-soluble liquid (Washington)", "flowable (US label)", "some makers (Washington)"],
    SD: ["suspension for direct application, not mixed (international)", "no US meaning known"],
    GL: ["emulsifiable gel (international)", "gel of either kind (US label)"],
    P: ["pellets, not mixed (US label)", "no international meaning"],
  };

  test.each(Object.entries(choices))("%s is refused with what each list says of it", (code, wanted) => {
    const [problem] = problemsOf(() => formulationOf(code));
    expect([problem?.code, problem?.path]).toEqual(["type", "code"]);
    expect(problem?.expected).toBe(
      `a code with one meaning, or the list that the label follows: formulationOf(${JSON.stringify(code)}, { scheme: "international" })`,
    );
    expect(problem?.choices).toHaveLength(wanted.length);
    wanted.forEach((words, n) => {
      expect(problem?.choices?.[n]?.endsWith(words), `${problem?.choices?.[n]}`).toBe(true);
    });
  });

  test("one that only a US list leaves open names the kinds that it can be", () => {
    const [label] = problemsOf(() => formulationOf("L", { scheme: "US label" }));
    expect(label).toMatchObject({ code: "type", path: "code", expected: "a code with one meaning" });
    const [c] = problemsOf(() => formulationOf("C", { scheme: "US label" }));
    expect(c?.expected).toBe('a code that says which kind it is; here it says "concentrate"');
    expect(c?.choices).toEqual(["SL", "SC", "EC"]);
    const [sl] = problemsOf(() => formulationOf("SL", { scheme: "New England" }));
    expect(sl?.expected).toContain('"slurry"');
    expect(sl?.choices?.[0]).toBe("SL: soluble concentrate (international)");
  });
});

describe("letters without a scheme", () => {
  test("that the two lists read differently are refused with what each says", () => {
    const letters = new Set([
      ...Object.keys(internationalCodes),
      ...Object.values(labelAbbreviations).flatMap(({ meanings }) => Object.keys(meanings)),
    ]);
    const read = (code: string, scheme: CodeScheme): string | undefined =>
      problemsOf(() => formulationOf(code, { scheme }))[0]?.expected.startsWith("a formulation code, such as")
        ? undefined
        : readAs(code, scheme);
    let differing = 0;
    for (const code of letters) {
      const [abroad, home] = [read(code, "international"), read(code, "US label")];
      if (abroad === undefined || home === undefined || abroad === home) continue;
      differing += 1;
      expect(problemsOf(() => formulationOf(code))[0]?.choices?.length, code).toBeGreaterThan(1);
    }
    expect(differing).toBeGreaterThan(0);
  });

  test("that one list alone has are read by it, and unknown ones of another tell what they mean there", () => {
    expect(formulationOf("DF")).toBe("WG");
    expect(formulationOf("ZC")).toBe("ZC");
    const [problem] = problemsOf(() => formulationOf("SD", { scheme: "US label" }));
    expect(problem?.expected).toBe("a formulation code, such as WP, WG, SC, EC or SL");
    expect(problem?.choices).toEqual([
      "suspension for direct application, not mixed (international)",
      "no US meaning known",
    ]);
    expect(problemsOf(() => formulationOf("QQ", { scheme: "US label" }))[0]).not.toHaveProperty("choices");
    expect(problemsOf(() => formulationOf("Q4"))[0]?.expected).not.toContain("jugCode");
  });

  test("have blanks around them taken off", () => {
    expect(codeMeanings(" sc ")).toEqual(codeMeanings("SC"));
    expect(jugCode(" 4F ").content?.toString()).toBe("4 lb/gal of ai/product");
    expect(jugCode("3.25EC").content?.toString()).toBe("3.25 lb/gal of ai/product");
    for (const code of ["#4F", "4F#", "4.F", "4 5F"])
      expect(problemsOf(() => jugCode(code))[0]?.path).toBe("code");
  });
});

describe("refusals", () => {
  const rows: readonly (readonly [call: () => unknown, code: string, path: string, words: string])[] = [
    [() => formulationOf(7 as never), "type", "code", "the letters on the label"],
    [() => codeMeanings(7 as never), "type", "code", "the letters on the label"],
    [() => formulationOf("QQ"), "type", "code", "a formulation code, such as WP, WG, SC, EC or SL"],
    [() => formulationOf("75WDG"), "type", "code", "jugCode reads one with a number"],
    [() => formulationOf("WP", { scheme: "Ohio" as never }), "type", "options.scheme", "a list of codes"],
    [() => formulationOf("WP", { list: "Ohio" } as never), "type", "options.list", "scheme"],
    [() => jugCode("75"), "type", "code", 'such as "4F", "2EC", "75WDG", "50WP" or "WSB"'],
    [() => jugCode("120WP"), "range", "code", "100 % or less of a dry product"],
    [() => jugCode("17F"), "range", "code", "16 lb/gal or less"],
    [() => jugCode("500SC"), "range", "code", 'say { scheme: "international" }'],
    [() => jugCode("99SC", { scheme: "international" }), "type", "code", "100 or more"],
    [() => jugCode("4F", { list: "Ohio" } as never), "type", "options.list", "scheme"],
  ];
  test.each(rows)("%s", (call, code, path, words) => {
    const [problem] = problemsOf(call);
    expect([problem?.code, problem?.path]).toEqual([code, path]);
    expect(problem?.expected).toContain(words);
  });

  test("a code without a number is not sent to the reader of codes with one", () => {
    expect(problemsOf(() => formulationOf("QQ"))[0]?.expected).not.toContain("jugCode");
  });

  test("a list that is not known is told with those that are", () => {
    expect(problemsOf(() => formulationOf("WP", { scheme: "Ohio" as never }))[0]?.choices).toEqual([
      "international",
      "US label",
      "New England",
      "Washington",
    ]);
  });
});

describe("numbers on a jug, at their limits", () => {
  test.each([
    ["16F", "16 lb/gal of ai/product"],
    ["100WP", "100 % w/w of ai/product"],
    ["0.5 G/L", undefined],
    ["80 WSB", "80 % w/w of ai/product"],
    ["80 WS BAG", "80 % w/w of ai/product"],
    ["80WSPB", "80 % w/w of ai/product"],
  ] as const)("%s", (code, content) => {
    let found: string | undefined;
    problemsOf(() => {
      found = jugCode(code).content?.toString();
    });
    expect(found).toBe(content);
  });

  test("100 g/L is read in an international code, and 20 characters are a code", () => {
    expect(jugCode("100SC", { scheme: "international" }).content?.toString()).toBe("100 g/L of ai/product");
    expect(jugCode(`4${" ".repeat(18)}F`.replace(/ +/, " ")).formulation).toBe("SC");
    expect(problemsOf(() => jugCode(`4F${" ".repeat(19)}`))[0]?.path).toBe("code");
    expect(jugCode(`4F${" ".repeat(18)}`).formulation).toBe("SC");
  });
});
