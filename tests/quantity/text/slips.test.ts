// What is a slip of the pen, and what is another thing: a suggestion must not name a unit or a substance of another kind.
import { describe, expect, test } from "vitest";
import { parseQuantity, suggestSubstance, suggestUnit } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

const none = (words: string): void => {
  for (const word of words.split(" "))
    expect([word, suggestUnit(word), suggestSubstance(word)]).toEqual([word, undefined, undefined]);
};

describe("other things are no slips", () => {
  test("other units: of NIST SP 811, appendix B, of UCUM and of the trade", () => {
    none(
      "mcg mcl mol mole moles mill mills mils mgd rem rod rods rai rps gray daa dam barn btu cal lbf psia psf ksi degK degR poundal",
    );
    none(
      "slug slugs dram drams bbl bbls barrels bushes dalton daltons kips hands links chains perch var lux mho clo lea dag hm dm kgf",
    );
    for (const unit of ["us tonne", "US tonnes"])
      expect([unit, suggestUnit(unit)]).toEqual([unit, undefined]);
  });

  test("other elements, by their names of IUPAC, and other salts", () => {
    none(
      "hydrogen helium lithium beryllium carbon oxygen fluorine neon argon titanium vanadium chromium cobalt gallium germanium arsenic selenium bromine rubidium strontium cadmium indium tin antimony iodine caesium cesium barium lead mercury silver gold radium rhodium palladium tellurium thallium bismuth uranium",
    );
    none(
      "phosphite phosphites phosphide phosphides phosphine phosphines phosphonate phosphonates phosphoric potassa",
    );
    none(
      "sulfite sulfites sulphite sulphites sulfide sulfides sulphide sulphides sulfonate sulfuric sulphuric",
    );
    none("nitrite nitrites nitride nitrides chlorate chlorite chlorites carbamate citrate manganate");
    none("silicate silicone alumina ammonium calcite copperas soluble fulvate titrate");
  });

  test("what comes by the piece, and what is no amount", () => {
    none("bag bags can cap caps jar jars lot lots liner liners pod pood tabs tubs dab dabs pinch pinches");
    none("quarter quarters point points squirts pass pitches hay manures mist mound mounds zone bone");
    none("produce tonnage inactive reactive sprayer hopper oil squares mach");
  });

  test("a known name behind a prefix is another size of it, and a zero or a digit is no letter", () => {
    none("kgal klb dgal megagal nanom kft");
  });
});

describe("what is near", () => {
  test("one letter in a short word, two in a long one, the first letter as it was", () => {
    for (const [text, unit] of [
      ["lbz", "lb"],
      ["galonz", undefined],
      ["gallonz", "gal"],
      ["gallnz", undefined],
      ["hektars", "ha"],
      ["hektar", undefined],
      ["tablspon", "tbsp"],
      ["callons", undefined],
      ["agllons", undefined],
      ["galolns", "gal"],
      ["omin", undefined],
      ["minn", "min"],
      ["lz", undefined],
      ["az", undefined],
      ["aacre", "acre"],
      // a slip that begins or ends like another thing
      ["millogram", "mg"],
      ["acrem", "acre"],
    ] as const)
      expect([text, suggestUnit(text)]).toEqual([text, unit]);
    expect(suggestSubstance("soill")).toBe("soil");
    expect(suggestSubstance("seedd")).toBe("seed");
  });

  test("the nearer of two, wherever it stands in the list", () => {
    // milliliter is one letter off and millimeter two, and the other way round
    expect(suggestUnit("mililiter")).toBe("mL");
    expect(suggestUnit("milimeter")).toBe("mm");
    expect(suggestUnit("kilometr")).toBe("km");
    // k is beside l; a millimeter is two letters off, and stands before it
    expect(suggestUnit("millikiter")).toBe("mL");
  });

  test("a text of sixty signs at most", () => {
    expect(suggestUnit(`${" ".repeat(57)}lbs`)).toBe("lb");
    expect(suggestUnit(`${" ".repeat(58)}lbs`)).toBeUndefined();
    expect(suggestSubstance(`${" ".repeat(52)}nitrogen`)).toBe("N");
    expect(suggestSubstance(`${" ".repeat(53)}nitrogen`)).toBeUndefined();
  });

  test("each side of a slash by itself, M and A below it", () => {
    for (const [text, unit] of [
      ["lbz/M", "lb/1000 ft2"],
      ["galon/A", "gal/acre"],
      ["lbz per acer", "lb/acre"],
      ["pundz / acer", undefined],
      ["pounz / acer", "lb/acre"],
      // M and A above a slash, or below kilograms, may be other things
      ["M/acer", undefined],
      ["A/ouur", undefined],
      ["kgz/M", undefined],
      ["lbz/Mile", "lb/mi"],
      ["lbz/Ac", "lb/acre"],
    ] as const)
      expect([text, suggestUnit(text)]).toEqual([text, unit]);
  });

  test("a number or a size of a name is not lost, and a doubtful name stays in doubt", () => {
    // 3 stone per acre are 42 lb, and an imperial pint an eighth of a gallon
    for (const text of ["stone/acer", "imp pt/acer", "lbz/100 gal", "lb/12 acer", "lb/stonee"])
      expect([text, suggestUnit(text)]).toEqual([text, undefined]);
    for (const text of [
      "MM/hur",
      "% N",
      "cwts/acer",
      "ounces/acer",
      "degree",
      "degrees",
      "degree/hur",
      "tons/acer",
      "grs/acer",
    ])
      expect([text, suggestUnit(text)]).toEqual([text, undefined]);
    // a torque, and a weight of what is not known
    for (const text of ["lb feet", "lb feet/acer", "lbz feet", "lb gravel/acre"])
      expect([text, suggestUnit(text)]).toEqual([text, undefined]);
  });

  test("what is counted in a time keeps its 1", () => {
    expect(problemsOf(() => parseQuantity("12 per wek"))[0]?.suggestion).toBe("1/week");
    expect(problemsOf(() => parseQuantity("3 lb/12 acer"))[0]?.suggestion).toBeUndefined();
  });

  test("only of the dimension that is asked for, or its sister", () => {
    expect(suggestUnit("ounz", "volume")).toBeUndefined();
    expect(suggestUnit("lbz/acer", "mass/area")).toBe("lb/acre");
    expect(suggestUnit("lbz/acer", "volume/area")).toBeUndefined();
    expect(suggestUnit("yarsd", "volume")).toBe("yd3");
    expect(suggestUnit("yarsd")).toBe("yd");
    expect(suggestUnit("lb", 3 as never)).toBeUndefined();
  });
});
