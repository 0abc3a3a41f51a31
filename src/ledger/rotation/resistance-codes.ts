import { type FactSource, frozen } from "../../quantity/index.js";

/** Active ingredients by the group of their mode of action, as a committee numbers the groups. */
export interface ResistanceCodeList {
  readonly type: "resistance-code-list";
  readonly version: 1;
  /** Which numbers: `"FRAC"` for fungicides, `"HRAC"` for herbicides, `"IRAC"` for insecticides, or another. */
  readonly scheme: string;
  readonly source: FactSource;
  /** Whether the groups were read in the source, come from memory, or from the caller. */
  readonly reached: "read" | "from memory" | "stated by the caller";
  /** Common names of active ingredients by group: `{ "11": ["azoxystrobin"] }`. */
  readonly groups: Readonly<Record<string, readonly string[]>>;
  /** Groups that work at many sites at once, among which resistance is rare; they are counted apart. */
  readonly multiSite: readonly string[];
}

const words = (names: string): readonly string[] => names.split(" ");

const fracRead: ResistanceCodeList = {
  type: "resistance-code-list",
  version: 1,
  scheme: "FRAC",
  source:
    "groups 4, 7 and 11 on pages of the Fungicide Resistance Action Committee (2018, 2022), others in the table of CropLife Australia and in turf lists of the University of California, Ohio State University (2008) and Golf Course Management (2018), which print M5 for M05 and 33 for P07. Verify on the label",
  reached: "read",
  groups: {
    "1": words("thiophanate-methyl"),
    "2": words("iprodione vinclozolin"),
    "3": words(
      "mefentrifluconazole metconazole myclobutanil propiconazole tebuconazole triadimefon triticonazole",
    ),
    "4": words("mefenoxam metalaxyl metalaxyl-M"),
    "7": words("boscalid fluopyram flutolanil fluxapyroxad isofetamid penthiopyrad pydiflumetofen"),
    "11": words("azoxystrobin fluoxastrobin mandestrobin pyraclostrobin trifloxystrobin"),
    "12": words("fludioxonil"),
    "14": words("quintozene"),
    M03: words("mancozeb thiram"),
    M04: words("captan"),
    M05: words("chlorothalonil"),
    P07: words("fosetyl fosetyl-aluminium"),
  },
  multiSite: words("M03 M04 M05"),
};

const fracRemembered: ResistanceCodeList = {
  type: "resistance-code-list",
  version: 1,
  scheme: "FRAC",
  source:
    "from memory of the FRAC code list of 2024 (Fungicide Resistance Action Committee): no text that was read has these. Verify on the label",
  reached: "from memory",
  groups: {
    "14": words("etridiazole"),
    "21": words("cyazofamid"),
    "28": words("propamocarb"),
    "29": words("fluazinam"),
  },
  multiSite: [],
};

const hracRead: ResistanceCodeList = {
  type: "resistance-code-list",
  version: 1,
  scheme: "HRAC",
  source:
    "numbers of 2020 and later (Herbicide Resistance Action Committee, the same as those of the Weed Science Society of America), on pages of the University of California, Montana State University, North Carolina State University and the Pacific Northwest Weed Management Handbook and in an Australian list (2021); ethofumesate in 15 as a benzofuran, a family of that group since its new numbering (Jhala et al., Weed Technology, 2023, abstract), where labels and handbooks before print 16. Verify on the label",
  reached: "read",
  groups: {
    "1": words("sethoxydim"),
    "2": words("halosulfuron-methyl metsulfuron-methyl penoxsulam"),
    "3": words("dithiopyr pendimethalin propyzamide trifluralin"),
    "4": words("2,4-D dicamba fluroxypyr MCPA"),
    "5": words("atrazine simazine"),
    "6": words("bentazone"),
    "9": words("glyphosate"),
    "10": words("glufosinate"),
    "14": words("carfentrazone-ethyl oxadiazon"),
    "15": words("dimethenamid-P ethofumesate S-metolachlor"),
    "18": words("asulam"),
    "27": words("mesotrione topramezone"),
  },
  multiSite: [],
};

const hracRemembered: ResistanceCodeList = {
  type: "resistance-code-list",
  version: 1,
  scheme: "HRAC",
  source:
    "from memory of the numbers of 2020 and later (Herbicide Resistance Action Committee): no text that was read has these. Verify on the label",
  reached: "from memory",
  groups: {
    "1": words("fenoxaprop-P-ethyl fluazifop-P-butyl"),
    "2": words("foramsulfuron trifloxysulfuron"),
    "3": words("prodiamine"),
    "4": words("mecoprop mecoprop-P triclopyr"),
    "5": words("amicarbazone"),
    "14": words("sulfentrazone"),
    "29": words("indaziflam isoxaben"),
  },
  multiSite: [],
};

const iracRead: ResistanceCodeList = {
  type: "resistance-code-list",
  version: 1,
  scheme: "IRAC",
  source:
    "in the strategies of CropLife Australia, in a copy of a poster of the Insecticide Resistance Action Committee, and for dinotefuran, imidacloprid and trichlorfon in a table of the University of Minnesota (copy), which swaps 1A and 1B; the diamides cyantraniliprole and tetraniliprole in a column of Kansas State University on group 28 and in Pennsylvania Turfgrass (2023). Verify on the label",
  reached: "read",
  groups: {
    "1A": words("carbaryl"),
    "1B": words("acephate chlorpyrifos trichlorfon"),
    "2B": words("fipronil"),
    "3A": words("beta-cyfluthrin bifenthrin deltamethrin lambda-cyhalothrin"),
    "4A": words("clothianidin dinotefuran imidacloprid thiamethoxam"),
    "5": words("spinosad"),
    "6": words("abamectin"),
    "22A": words("indoxacarb"),
    "28": words("chlorantraniliprole cyantraniliprole tetraniliprole"),
  },
  multiSite: [],
};

/**
 * Groups of active ingredients that are used on turf: for each committee a list of what was read, with where, and for
 * fungicides and herbicides one of what is remembered only. The lists are open: what is not in them is told as not known, and lists of the caller win. The
 * committees publish new ones each year, and the group stands on the label.
 */
export const resistanceCodeLists: readonly ResistanceCodeList[] = /* @__PURE__ */ frozen([
  fracRead,
  fracRemembered,
  hracRead,
  hracRemembered,
  iracRead,
]);
