import { type Citation, frozen } from "../../quantity/index.js";

// Where formulas of areas, volumes and materials are printed.

export const armyPesticidesMilitary: Citation = /* @__PURE__ */ frozen({
  title: "Pesticides in the Military, subcourse MD0173",
  publisher: "US Army Medical Department Center and School",
  where: "page 39",
});
export const westernCalculatingArea: Citation = /* @__PURE__ */ frozen({
  title: "Calculating area (horticulture toolbox, fertilisers and nutrients)",
  publisher: "Western Australian Department of Education, WestOne",
  where: "regular shapes",
  url: "http://www.westone.wa.gov.au/toolbox6/hort6/html/chemical_use/fertilisers_nutrients/fn27/fn27.htm",
});
export const genoaAreaField: Citation = /* @__PURE__ */ frozen({
  title: "Area of a field by triangles (exercise 1a, 36)",
  publisher: "University of Genoa, mathematics teaching pages",
  where: "script next to the figure",
  url: "http://macosa.dima.unige.it/om/esr/ge2/1a_36s.htm",
});
export const nationalMathematicsClass: Citation = /* @__PURE__ */ frozen({
  title: "Mathematics, class 9, chapter 12, Heron's formula",
  publisher: "National Council of Educational Research and Training (India)",
  where: "examples 1 and 2, page 201",
  url: "https://fliphtml5.com/bzmwb/gnxm/CBSE-Class-9-NCERT-Book-Maths/201/",
});
export const purdueBigLawn: Citation = /* @__PURE__ */ frozen({
  title: "How big is your lawn?",
  publisher: "Purdue University turf tips",
  year: 2014,
  where: "area calculation example, figure 2",
  url: "http://purdueturftips.blogspot.com/2014/04/how-big-is-your-lawn.html",
});
export const ohioPondMeasurements: Citation = /* @__PURE__ */ frozen({
  title: "Pond Measurements",
  publisher: "Ohio State University Extension, School of Natural Resources",
  where: "surface area, Figure B",
  url: "http://ohioline.osu.edu/a-fact/0002.html",
});
export const westAfricanPaper: Citation = /* @__PURE__ */ frozen({
  title: "Mathematics paper 2017, question 35, with solution",
  publisher: "West African Examinations Council, in an archive of past papers",
  year: 2017,
  where: "question 35",
  url: "https://www.africaexams.com/test/waec-mathematics-2017-paper/35",
});
export const southDakotaChemigation: Citation = /* @__PURE__ */ frozen({
  title: "Chemigation needs proper calibration",
  publisher: "farm magazine, after South Dakota State University Extension",
  year: 2023,
  where: "do the math, area covered",
  url: "https://www.farmprogress.com/farming-equipment/chemigation-needs-proper-calibration",
});
export const nationalMathematicsClassAtExercise: Citation = /* @__PURE__ */ frozen({
  title: "Mathematics, class 10, areas related to circles",
  publisher: "National Council of Educational Research and Training (India)",
  where: "exercise 12.2, question 8, with the answers of a tutor",
  url: "https://www.lidolearning.com/questions/m_g10_ncert_ch12_ex12p2_8pii/a-horse-is-tied-to-a-peg-at-on/",
});
export const reginaAreaCircular: Citation = /* @__PURE__ */ frozen({
  title: "Area of a circular segment from chord and height",
  publisher: "University of Regina, mathematics question service",
  where: "answer to Larry, L = 12, h = 4",
  url: "http://mathcentral.uregina.ca/QQ/database/QQ.02.06/larry4.html",
});
export const groundsCalculateAreas: Citation = /* @__PURE__ */ frozen({
  title: "Calculate areas",
  publisher: "Grounds Maintenance (trade magazine)",
  where: "ovals or egg shapes, within 5 percent",
});
export const trigonometryProblems: Citation = /* @__PURE__ */ frozen({
  title: "Trigonometry, problems on areas of polygons",
  publisher: "19th century textbook, text of a scan",
  where: "article 163, exercise 9",
  url: "https://books.google.co.ve/books?id=6ysAAAAAYAAJ&pg=PA160",
});
export const groundsCalculateAreasAtIrregular: Citation = /* @__PURE__ */ frozen({
  title: "Calculate areas",
  publisher: "Grounds Maintenance (trade magazine)",
  where: "irregular shapes",
});
export const westernCalculatingAreaAtIrregular: Citation = /* @__PURE__ */ frozen({
  title: "Calculating area (horticulture toolbox, fertilisers and nutrients)",
  publisher: "Western Australian Department of Education, WestOne",
  where: "irregular shapes, kidney-shaped green",
  url: "http://www.westone.wa.gov.au/toolbox6/hort6/html/chemical_use/fertilisers_nutrients/fn27/fn27.htm",
});
export const trackLaps: Citation = /* @__PURE__ */ frozen({
  title: "How many meters a lap of the playground",
  publisher: "maker of sports surfaces, technical page",
  where: "tracks with radii of 36 and 37.898 m",
  url: "http://en.jiehao1996.com/news/35.html",
});
export const acreSides: Citation = /* @__PURE__ */ frozen({
  title: "How many linear feet are around an acre?",
  publisher: "general reference site",
  where: "square and circular acre",
  url: "https://www.reference.com/science/many-linear-feet-around-acre-55a7bbef9f9e2920",
});
export const forestCalculatingArea: Citation = /* @__PURE__ */ frozen({
  title: "Calculating area on a slope (forest example)",
  publisher: "forest measurement guide",
  where: "correcting the area",
});
export const slopeTable: Citation = /* @__PURE__ */ frozen({
  title: "What does a 4 to 1 slope mean: table of common slopes",
  publisher: "question-and-answer page",
  where: "table",
  url: "https://consumersolution.org/what-does-a-4-1-slope-mean/",
});
export const gaugeLyingTank: Citation = /* @__PURE__ */ frozen({
  title: "How to gauge a horizontal cylindrical tank",
  publisher: "civil engineering handbook, reposted",
  where: "rules 1 and 2, the correct answers",
  url: "https://www.civilengineeringhandbook.tk/centrifugal-pumps-2/how-to-gauge-a-horizontal-cylindrical-tank.html",
});
export const coloradoContainment: Citation = /* @__PURE__ */ frozen({
  title: "8 CCR 1206-1, part 13.0 A",
  publisher: "State of Colorado",
  where: "125 and 110 percent",
});
export const epaContainment: Citation = /* @__PURE__ */ frozen({
  title: "SPCC Guidance for Regional Inspectors",
  publisher: "US Environmental Protection Agency",
  where: "figure 4-5, criterion of 110 %",
  url: "https://scribd.com/document/614313170/Secondary-Containment-Guidance",
});
export const virginiaControlPonds: Citation = /* @__PURE__ */ frozen({
  title: "Weed control in ponds and lakes (aquatics)",
  publisher: "Virginia Cooperative Extension",
  year: 1981,
  where: "acre-feet of a pond",
  url: "http://hdl.handle.net/10919/87933",
});
export const texasTaleTape: Citation = /* @__PURE__ */ frozen({
  title: "The Tale of the Tape: measuring pond surface area and volume",
  publisher: "Texas Cooperative Extension (slides)",
  where: "determining average depth",
});
export const mathematicsForEnvironment: Citation = /* @__PURE__ */ frozen({
  title: "Mathematics and Statistics for the Environment",
  publisher: "book extract on a reference site",
  where: "example 23.19",
  url: "http://what-when-how.com/Tutorial/topic-topic-1524mbeo/Mathematics-and-Statistics-for-the-Environment-637.html",
});
export const usgaTooEasy: Citation = /* @__PURE__ */ frozen({
  title: "Too Easy To Take For Granted",
  publisher: "USGA Green Section, regional update",
  year: 2014,
  where: "text",
});
export const usgaGoldilocksPrinciple: Citation = /* @__PURE__ */ frozen({
  title: "The Goldilocks Principle For Sand Topdressing",
  publisher: "USGA Green Section, regional update",
  year: 2018,
  where: "assumption",
  url: "https://www.usga.org/content/usga/home-page/course-care/regional-updates/central-region/2018/the-goldilocks-principle-for-sand-topdressing.html",
});
export const soilPracticeProblems: Citation = /* @__PURE__ */ frozen({
  title: "Practice problems: porosity and bulk density",
  publisher: "University of California, Davis, Soil Science 100",
  where: "problem 2",
  url: "https://lawr.ucdavis.edu/classes/ssc100/probsets/pset01.html",
});
export const pesticideDriftEsa: Citation = /* @__PURE__ */ frozen({
  title: "Drift and the ESA",
  publisher: "Pesticide Environmental Stewardship",
  where: "buffer zone, example",
  url: "https://pesticidestewardship.org/?p=7393",
});
