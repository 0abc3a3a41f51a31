import { australianTurfFungicideLimits, resistanceCodeLists } from "../../src/index.js";
import type { PublishedCheck, Source } from "./check.js";

/** Whether the strategy for Australia, where it rotates a group, has an active ingredient in it. */
const isInStrategy = (group: string, name: string): boolean =>
  australianTurfFungicideLimits.limits.every(
    (limit) =>
      limit.kind !== "rotation" || limit.group !== `FRAC ${group}` || limit.of.includes(`ai:${name}`),
  );

/**
 * The group that the shipped list has an active ingredient in, and the strategy too, as a number; the letters of
 * multi-site groups are dropped.
 */
const groupOf = (scheme: string, name: string): number => {
  // Only the lists that say they were read: a name that is printed here has to stand in one of them.
  const [group] =
    resistanceCodeLists
      .filter((one) => one.scheme === scheme && one.reached === "read")
      .flatMap(({ groups }) => Object.entries(groups))
      .find(([, names]) => names.includes(name)) ?? [];
  if (group === undefined || (scheme === "FRAC" && !isInStrategy(group, name))) return Number.NaN;
  // P07 was 33 until 2020.
  return group === "P07" ? 33 : Number(group.replace(/^M0?/, ""));
};

/** What a list prints, `name group` each; codes of two editions are compared by what they mean. */
const transcription = (entry: string, scheme: string, source: Source, printed: string): PublishedCheck => {
  const rows = printed.split(", ").map((row) => {
    const [name = "", group = ""] = row.split(" ");
    return { name, group: Number(group.replace(/^M/, "")) };
  });
  return {
    entry,
    formulas: ["resistanceRotation"],
    source,
    reached: "read",
    kind: "transcription",
    given: `groups of ${rows.length} active ingredients`,
    answers: rows.map(({ name, group }) => ({ of: `group of ${name}`, printed: group, to: 1 })),
    compute: () => rows.map(({ name }) => groupOf(scheme, name)),
  };
};

/** Insecticides, whose groups carry letters: each name counts that the list has in the group that is printed. */
const lettered = (
  entry: string,
  source: Source,
  printed: Readonly<Record<string, string>>,
): PublishedCheck => {
  const groups =
    resistanceCodeLists.find(({ scheme, reached }) => scheme === "IRAC" && reached === "read")?.groups ?? {};
  const rows = Object.entries(printed).map(([group, names]) => ({ group, names: names.split(", ") }));
  return {
    entry,
    formulas: ["resistanceRotation"],
    source,
    reached: "read",
    kind: "transcription",
    given: "active ingredients by group, as far as the list has them",
    answers: rows.map(({ group, names }) => ({
      of: `in IRAC group ${group}: ${names.join(", ")}`,
      printed: names.length,
      to: 1,
    })),
    compute: () =>
      rows.map(({ group, names }) => names.filter((name) => (groups[group] ?? []).includes(name)).length),
  };
};

/** Groups of modes of action, as lists for turf print them. */
export const rotationChecks: readonly PublishedCheck[] = [
  transcription(
    "rotation-001",
    "FRAC",
    {
      title: "Families of fungicides for turfgrass",
      publisher: "Ohio State University, Department of Plant Pathology",
      year: 2008,
      url: "https://docslib.org/doc/3662378/families-of-fungicides-for-turfgrass-1-2008-j",
    },
    "mancozeb M3, thiram M3, iprodione 2, vinclozolin 2, thiophanate-methyl 1, myclobutanil 3, propiconazole 3, triticonazole 3, metconazole 3, azoxystrobin 11, trifloxystrobin 11",
  ),
  transcription(
    "rotation-002",
    "FRAC",
    {
      title: "Table of fungicides for turf",
      publisher: "Golf Course Management magazine",
      year: 2018,
      where: "February 2018, p. 83; the title of the table was not seen",
      url: "http://gcmdigital.gcsaa.org/i/931112-feb-2018/96",
    },
    "thiophanate-methyl 1, iprodione 2, metconazole 3, myclobutanil 3, propiconazole 3, tebuconazole 3, triadimefon 3, triticonazole 3, chlorothalonil M5, fludioxonil 12, quintozene 14",
  ),
  transcription(
    "rotation-003",
    "FRAC",
    {
      title: "Turfgrass: general properties and use of fungicides",
      publisher: "University of California, Integrated Pest Management",
      url: "https://ipm.ucanr.edu/agriculture/turfgrass/General-Properties-And-Use-Of-Fungicides",
    },
    "azoxystrobin 11, captan M4, chlorothalonil M5, fludioxonil 12",
  ),
  transcription(
    "rotation-004",
    "HRAC",
    {
      title: "New MoA code for Australia",
      publisher: "an agronomy service, with the letters and numbers of seven herbicides",
      year: 2021,
      where: "C 5, D 3, I 4, M 9",
      url: "https://www.cropsmart.com.au/new-moa-code-aus/",
    },
    "atrazine 5, trifluralin 3, 2,4-D 4, glyphosate 9",
  ),
  transcription(
    "rotation-006",
    "FRAC",
    {
      title: "QoI fungicides: recommendations",
      publisher: "Fungicide Resistance Action Committee",
      where: "the fungicides of FRAC code 11, without 11A",
      url: "http://frac.info/frac-teams/working-groups/qol-fungicides/recommendations-for-qoi",
    },
    "azoxystrobin 11, fluoxastrobin 11, mandestrobin 11, pyraclostrobin 11, trifloxystrobin 11",
  ),
  transcription(
    "rotation-007",
    "FRAC",
    {
      title: "SDHI fungicides: recommendations",
      publisher: "Fungicide Resistance Action Committee",
      year: 2022,
      where:
        "the fungicides of one cross-resistance group; that it is number 7, from Rutgers, FRAC group 7 fungicides",
      url: "https://www.frac.info/frac-teams/working-groups/sdhi-fungicides/recommendations-for-sdhi",
    },
    "boscalid 7, fluopyram 7, flutolanil 7, fluxapyroxad 7, isofetamid 7, penthiopyrad 7, pydiflumetofen 7",
  ),
  transcription(
    "rotation-008",
    "FRAC",
    {
      title: "FRAC code list 2018",
      publisher: "Fungicide Resistance Action Committee",
      year: 2018,
      where: "A1, phenylamides",
      url: "https://vdocuments.net/frac-code-list-2018-genase-p-fu-fu-p-b-sdhi-succinate-dehydrogenase-inhibitors.html",
    },
    "metalaxyl 4, metalaxyl-M 4, mefenoxam 4",
  ),
  transcription(
    "rotation-009",
    "FRAC",
    {
      title: "Fungicide activity group table",
      publisher: "CropLife Australia",
      where: "groups 1 to 7, by FRAC code",
      url: "https://www.croplife.org.au/resources/programs/resistance-management/fungicide-activity-group-table-2-draft/",
    },
    "thiophanate-methyl 1, iprodione 2, mefentrifluconazole 3, myclobutanil 3, propiconazole 3, tebuconazole 3, triadimefon 3, triticonazole 3, metalaxyl 4, metalaxyl-M 4, mefenoxam 4, pydiflumetofen 7, flutolanil 7, boscalid 7",
  ),
  transcription(
    "rotation-010",
    "FRAC",
    {
      title: "Table of fungicides for turf",
      publisher: "Golf Course Management magazine",
      year: 2018,
      where: "February 2018, p. 83, phosphonates, by the number before P07",
      url: "http://gcmdigital.gcsaa.org/i/931112-feb-2018/96",
    },
    "fosetyl-aluminium 33",
  ),
  transcription(
    "rotation-011",
    "HRAC",
    {
      title: "Herbicide symptoms: microtubule assembly inhibitors; long chain fatty acid inhibitors",
      publisher: "University of California",
      where: "WSSA groups 3 and 15",
      url: "https://herbicidesymptoms.ipm.ucanr.edu/MOA/Microtubule_Assembly_Inhibitors/",
    },
    "propyzamide 3, pendimethalin 3, dithiopyr 3, S-metolachlor 15",
  ),
  transcription(
    "rotation-012",
    "HRAC",
    {
      title: "Herbicide injury guide: synthetic auxins; pigment inhibitors; lipid synthesis inhibitors",
      publisher: "Montana State University Extension",
      where: "WSSA groups 4, 27 and 1",
      url: "https://exponent.montana.edu/extension/Full_HTML_Pubs/herbicideinjuryguide/Auxins.html",
    },
    "2,4-D 4, dicamba 4, fluroxypyr 4, mesotrione 27, topramezone 27, sethoxydim 1",
  ),
  transcription(
    "rotation-013",
    "HRAC",
    {
      title: "Herbicide mode of action in tree, nut and vine crops",
      publisher: "University of California Cooperative Extension, Fresno County",
      year: 2016,
      url: "https://docslib.org/doc/10313544/herbicide-mode-of-action-moa-in-tree-nut-and-vine-crops-in",
    },
    "sethoxydim 1, penoxsulam 2, 2,4-D 4",
  ),
  transcription(
    "rotation-014",
    "HRAC",
    {
      title: "Weed control in squash, pumpkin and cucumber",
      publisher: "Pacific Northwest Weed Management Handbook",
      where: "site of action of halosulfuron-methyl",
      url: "https://pnwhandbooks.org/node/8868/print",
    },
    "halosulfuron-methyl 2",
  ),
  ...(
    [
      [
        "rotation-019",
        "Field grown nursery stock: postemergence",
        "site of action of asulam",
        "https://www.pnwhandbooks.org/weed/horticultural/nursery-greenhouse-bulb/field-grown-nursery-stock/postemergence-12",
        "asulam 18",
      ],
      [
        "rotation-020",
        "Established tree, shrub, rose and ground cover landscapes: postemergence or foliar applied",
        "site of action of bentazon",
        "https://pnwhandbooks.org/weed/horticultural/landscape-maintenance/established-tree-shrub-rose-ground-cover-landscapes/postemergence-foliar-applied",
        "bentazone 6",
      ],
      [
        "rotation-021",
        "Oxadiazon",
        "site of action",
        "https://pnwhandbooks.org/node/55/oxadiazon",
        "oxadiazon 14",
      ],
      [
        "rotation-022",
        "Container growing areas",
        "site of action of glufosinate ammonium",
        "http://www.pnwhandbooks.org/weed/horticultural/nursery-greenhouse-bulb/container-grown-nursery-stock/container-growing-areas",
        "glufosinate 10",
      ],
      [
        "rotation-023",
        "Container grown nursery stock: preemergence weed control within containers",
        "sites of action of dimethenamid-P and dithiopyr",
        "https://pnwhandbooks.org/weed/horticultural/nursery-greenhouse-bulb/container-grown-nursery-stock/preemergence-weed-control-within-containers",
        "dimethenamid-P 15, dithiopyr 3",
      ],
      [
        "rotation-024",
        "Forage alfalfa: other registered herbicides",
        "site of action of MCPA",
        "http://pnwhandbooks.org/weed/agronomic/forage-seed/forage-alfalfa/other-registered-herbicides",
        "MCPA 4",
      ],
      [
        "rotation-025",
        "Tomato, pepper and eggplant: pretransplant, preemergence or post-directed",
        "site of action of carfentrazone",
        "https://pnwhandbooks.org/weed/horticultural/vegetable/tomato-pepper-eggplant/pretransplant-preemergence-post-directed",
        "carfentrazone-ethyl 14",
      ],
    ] as const
  ).map(([entry, title, where, url, printed]) =>
    transcription(
      entry,
      "HRAC",
      { title, publisher: "Pacific Northwest Weed Management Handbook", where, url },
      printed,
    ),
  ),
  transcription(
    "rotation-026",
    "HRAC",
    {
      title: "Photosystem II: triazine herbicides",
      publisher: "North Carolina State University Extension",
      where: "herbicide mode of action category: WSSA 5, of s-triazines such as atrazine and simazine",
      url: "https://content.ces.ncsu.edu/photosystem-ii-triazine-herbicides",
    },
    "atrazine 5, simazine 5",
  ),
  transcription(
    "rotation-028",
    "HRAC",
    {
      title: "Ethofumesate",
      publisher: "Wikipedia",
      where:
        "group 15 by the numbers; that benzofurans are a family of it since the new numbering: Jhala et al., Weed Technology, 2023, doi 10.1017/wet.2023.90, abstract",
      url: "https://en.wikipedia.org/wiki/Ethofumesate",
    },
    "ethofumesate 15",
  ),
  transcription(
    "rotation-029",
    "HRAC",
    {
      title: "Blackberry vines, wild",
      publisher: "Pacific Northwest Weed Management Handbook",
      where: "site of action of metsulfuron methyl",
      url: "https://pnwhandbooks.org/node/8486/print",
    },
    "metsulfuron-methyl 2",
  ),
  lettered(
    "rotation-030",
    {
      title: "Anthranilic diamide insecticides",
      publisher: "Kansas State University, in Greenhouse Product News",
      url: "https://gpnmag.com/article/dr-bugs-anthranilic-diamide-insecticides/",
    },
    { "28": "chlorantraniliprole, cyantraniliprole" },
  ),
  lettered(
    "rotation-031",
    {
      title: "New insecticides for turfgrass insect pest management",
      publisher: "Pennsylvania Turfgrass",
      year: 2023,
      where: "tetraniliprole, an anthranilic diamide; that these are group 28: see rotation-030",
      url: "https://issuu.com/leadingedgepubs/docs/pa-turfgrass-2023-spring/s/20357942",
    },
    { "28": "tetraniliprole" },
  ),
  lettered(
    "rotation-027",
    {
      title: "Insecticides for adult and grub control of white grubs",
      publisher: "University of Minnesota, Department of Entomology (copy)",
      where: "table 1; it prints 1A for the organophosphate and 1B for the carbamate, the wrong way round",
      url: "https://info.5y1.org/golf-courses-in-northern-minnesota_1_bf5c45.html",
    },
    { "1A": "carbaryl", "1B": "trichlorfon", "4A": "imidacloprid, clothianidin, thiamethoxam, dinotefuran" },
  ),
  lettered(
    "rotation-015",
    {
      title: "Turf, various insects and mites: resistance management strategy",
      publisher: "CropLife Australia",
      where: "table of groups",
      url: "https://www.croplife.org.au/resources/programs/resistance-management/turf-various-3/",
    },
    {
      "2B": "fipronil",
      "3A": "beta-cyfluthrin",
      "4A": "clothianidin",
      "6": "abamectin",
      "22A": "indoxacarb",
      "28": "chlorantraniliprole",
    },
  ),
  lettered(
    "rotation-016",
    {
      title: "Potato moth: resistance management strategy",
      publisher: "CropLife Australia",
      year: 2017,
      where: "table of groups",
      url: "https://www.croplife.org.au/resistance-strategy/2017-potato-potato-moth-leafminer/",
    },
    { "1A": "carbaryl", "1B": "acephate", "5": "spinosad", "28": "chlorantraniliprole" },
  ),
  lettered(
    "rotation-017",
    {
      title: "Wide host range, serpentine leafminer: resistance management strategy",
      publisher: "CropLife Australia",
      where: "table of groups",
      url: "https://www.croplife.org.au/resources/programs/resistance-management/wide-host-range/",
    },
    { "4A": "thiamethoxam", "5": "spinosad", "6": "abamectin" },
  ),
  lettered(
    "rotation-018",
    {
      title: "Mode of action classification",
      publisher: "Insecticide Resistance Action Committee, poster, as a site of documents repeats it",
      where: "groups 1A to 3A",
      url: "https://zanotowane.pl/1028/9836",
    },
    {
      "1A": "carbaryl",
      "1B": "acephate, chlorpyrifos",
      "2B": "fipronil",
      "3A": "bifenthrin, deltamethrin, lambda-cyhalothrin",
    },
  ),
  {
    entry: "rotation-005",
    formulas: ["checkLimits"],
    source: {
      title: "Turf, various: resistance management strategy",
      publisher: "CropLife Australia",
      year: 2026,
      where: "guidelines, first and second point",
      url: "https://croplife.org.au/resources/programs/resistance-management/turf-various-4/",
    },
    reached: "read",
    kind: "transcription",
    given: "the groups that are to be rotated, and how many sprays in a row",
    answers: [
      ...[1, 2, 4, 7, 11, 21].map((printed) => ({ of: "FRAC group", printed, to: 1 })),
      { of: "sprays in a row at most", printed: 1, to: 1 },
    ],
    compute: () => {
      const groups = australianTurfFungicideLimits.limits.flatMap((limit) =>
        limit.kind === "rotation" ? [limit] : [],
      );
      return [
        ...groups.map(({ group }) => Number(group.replace("FRAC ", ""))),
        Math.max(...groups.map(({ atMostInARow }) => atMostInARow ?? Number.NaN)),
      ];
    },
  },
];
