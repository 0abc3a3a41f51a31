import { frozen } from "../../quantity/index.js";

/** What went wrong, told to the learner who did it. */
const told = {
  "multiplied by the percentage":
    "You multiplied by the percentage. Only part of the product is nutrient or active ingredient, so it takes more product than that: divide by the percentage.",
  "divided by the percentage":
    "You divided by the percentage. The part is less than the whole: multiply by the percentage.",
  "product for nutrient":
    "That is the nutrient or active ingredient, not the product. Only part of the product is that: divide by what the label states.",
  "nutrient for product":
    "That is the amount of product. The question asks for the nutrient in it: multiply by the percentage of the label.",
  "wrong number of the grade":
    "You used another number of the grade. A grade reads nitrogen, phosphate, potash, in that order.",
  "P for P2O5":
    "The target is phosphorus (P), the label states phosphate (P2O5). One part of P is 2.29 parts of P2O5: convert before you divide by the label's percentage.",
  "P2O5 for P the wrong way":
    "You converted the wrong way. Phosphate (P2O5) weighs more than the phosphorus (P) in it: P × 2.29 = P2O5.",
  "one unit of spray only":
    "That is for the amount of spray that the label names. Multiply by how many times the tank holds it.",
  "one minute only": "That is what comes out in one minute. Multiply by the minutes.",
  "carrier for product": "That is the carrier. The question asks for the product.",
  "one unit of area only": "That is for one unit of area. Multiply by the number of units in the whole area.",
  "forgot to divide by the unit of area":
    "That is all of the spray. Divide it by the area that it went on, in units such as 1,000 sq ft or 100 m².",
  "acre for 1,000 sq ft":
    "You took an acre for 1,000 sq ft, or the other way around. An acre is 43,560 sq ft, or 43.56 times 1,000 sq ft.",
  "hectare for 100 m²": "You took a hectare for 100 m², or the other way around. A hectare is 10,000 m².",
  "rounded packages down":
    "You rounded down, and would run short before the end. Anything over a whole number takes one more.",
  "one package too many": "You counted one too many. Round up once, at the end.",
  "counted without the package size": "That is how much it is in all. Divide it by what each one holds.",
  "price of the product for that of the nutrient":
    "That is the price of a pound or kilogram of product. Only part of it is nutrient, so the nutrient costs more: divide by the percentage.",
  "forgot the weight of the bag":
    "You left out how much the bag holds. Divide the price of the bag by it to get the price of the product.",
  "divided by the price": "You divided by the price. The cost is the amount times the price: multiply.",
  "price upside down": "You divided the wrong way around. The price goes on top, the amount below.",
  "multiplied by the strength":
    "You multiplied by what a gallon or liter of the product holds. Divide by it: the stronger the product, the less it takes.",
  "forgot the density": "You left out the density. Weight = volume × density.",
  "density upside down":
    "You divided by the density where you should multiply, or the other way around. Weight = volume × density.",
  "ounce for fluid ounce":
    "You took 16 for 128. A gallon is 128 fluid ounces; 16 ounces make a pound, and that is weight.",
  "fluid ounces in a quart": "A gallon is 128 fluid ounces. 32 fluid ounces make a quart.",
  "spacing for swath":
    "One nozzle covers the spacing between nozzles, not the whole boom. Use the width that the flow belongs to.",
  "swath for spacing":
    "The flow is for the whole width. Use that width, not the spacing between two nozzles.",
  "feet for inches": "Check the units of length: 12 inches make a foot.",
  "meters for centimeters": "Check the units of length: 100 cm make a meter.",
  "seconds for minutes": "Check the units of time: 60 seconds make a minute.",
  "minutes for hours": "Check the units of time: 60 minutes make an hour.",
  "forgot the number of nozzles": "That is for one nozzle. Multiply by the number of nozzles.",
  "divided by the number of nozzles": "The figure is for each nozzle already: do not divide by their number.",
  "averaged speeds wrongly":
    "You averaged the speeds. The slow run lasts longer and counts for more: add the distances, add the times, then divide.",
  "one run only": "That is one run only. Use both.",
  "time upside down": "You divided the wrong way around. Speed is distance divided by time.",
  "multiplied by the speed": "You multiplied by the speed. Time is distance divided by speed.",
  "pressure in proportion":
    "Flow does not rise in step with pressure. It rises with the square root: four times the pressure for twice the flow.",
  "pressure upside down": "You turned the ratio upside down. More pressure gives more flow.",
  "pressure squared": "You squared the ratio of pressures. Flow goes with its square root.",
  "forgot the square": "Pressure goes with the square of the flow. You used the ratio as it is.",
  "square root for square": "You took a square root. Pressure goes with the square of the flow.",
  "parts as percent": "You took the parts as percent. 1 part in 50 is 2 %.",
  "percentage as a whole number": "A percentage is a part of 100. Divide by 100.",
  "tank over area":
    "You turned it upside down. The area that a tank covers is the tank divided by the volume per area.",
  "whole tanks only": "That is a full tank. The last load fills only part of it.",
  "room left in the tank": "That is the room left in the tank. The question asks for the spray in it.",
  "parts of water for parts of the mix":
    "1 part in so many counts the product in. 1 part to so many parts of water does not. Read which of the two is meant.",
  "product added on top": "You added the product on top of the finished volume. It is part of it.",
  "water for product": "That is the water. The question asks for the product.",
  "forgot passes": "The ground was covered more than once. Count every pass.",
  "counted a pass twice": "You counted one pass too many.",
  "whole rate on each pass":
    "That is the whole rate on every pass, which puts down a multiple. Divide the rate by the number of passes.",
  "width without overlap":
    "Neighboring passes overlap. Use the effective swath, which is less than the width thrown.",
  "overlap added": "You added the overlap to the width. It makes it narrower.",
  "diameter for radius": "You used the diameter for the radius. The radius is half of it.",
  "forgot the square of the radius": "You did not square the radius. Area = π × radius × radius.",
  "circumference for area": "That is the way around the circle. Area = π × radius × radius.",
  "rectangle for triangle": "You took it for a rectangle. A triangle is half as large.",
  "perimeter for area": "That is the way around. Area is length times width.",
  "forgot to take the part out": "You did not subtract the part that is not treated.",
  "added the part": "You added the part that should be subtracted.",
  "ends counted in full":
    "You added up all offsets as they are. By the trapezoidal rule the first and the last count half.",
  "27 for 9": "A cubic yard is 27 cubic feet. 9 is square feet in a square yard.",
  "depth in the wrong unit": "Convert the depth before you multiply it by an area.",
  "forgot the depth": "That is the surface. A volume needs the depth, too.",
  "multiplied by the live share":
    "You multiplied by the live share. It takes more seed than live seed: divide.",
  "purity only": "You left out germination. Live seed is purity times germination.",
  "germination only": "You left out purity. Live seed is purity times germination.",
  "average of purity and germination": "You averaged purity and germination. Multiply them.",
  "share of the cut height": "You took the share of the height of cut. It is a share of the standing grass.",
  "a third on top":
    "You added a third of the height of cut. A third of the TALL grass comes off, which is half of the height of cut.",
  "two thirds of the cut":
    "You took two thirds of the height of cut. The grass is taller than the cut when it is mown.",
  "forgot the growth before": "Count only the growth between two mowings.",
  "spacing not squared": "You divided by the spacing once. A plant takes spacing × spacing.",
  "forgot efficiency":
    "You left out the efficiency. Part of the water does not reach the roots: put down more.",
  "multiplied by efficiency": "You multiplied by the efficiency. That puts down less, not more: divide.",
  "forgot 0.623": "An inch of water on 1 sq ft is 0.623 gallon. You left that out.",
  "all cans for the lowest quarter":
    "The lower quarter is the driest fourth of the cans. You took another group.",
  "driest can only": "You took the driest can alone. Take the mean of the driest fourth.",
  "fraction upside down": "You divided the wrong way around.",
  "all water for the part used":
    "That is all the water the soil holds. Only the stated part may be used up before the next watering.",
  "multiplied by the rating": "You multiplied by the lime's rating. A weaker lime takes more of it: divide.",
  "forgot the rating": "You left out the rating of the lime at hand.",
  "forgot the base": "You did not take off the base temperature.",
  "range for mean": "You took the difference of high and low. Take their mean.",
  "high for mean": "You used the high of the day. Take the mean of high and low.",
  "negative days counted": "A day below the base counts zero. It does not take away from the sum.",
  "forgot what is gone already": "You counted from the beginning. Part of the sum is already reached.",
  "added instead of taken away": "You added where you should subtract.",
  "margin for markup":
    "You added the percent to the cost. A margin is a share of the PRICE: divide the cost by (1 - margin).",
  "markup for margin": "You divided by (1 - percent), which is a margin. A markup is added to the cost.",
  "percent alone": "That is the percent alone. It comes on top of what you started with.",
  "percent taken off": "You took the percent off, which makes it less. It has to be more.",
  "forgot an entry": "You left out one of the entries.",
  "last day counted twice": "You counted both ends. From one day to the next is one day.",
  "month of thirty days": "You counted every month as 30 days. Count the days of each month.",
  "both ends left out": "You counted only the days in between. From one day to the next is one day.",
  "months left out": "You compared the days of the month only. Count the months between them, too.",
  "sum for mean": "That is the sum. Divide it by the number of readings.",
  "wrong number of readings": "Divide by the number of readings: count them again.",
  "forgot the percent active": "You left out the percent of active ingredient in the product.",
  "forgot the number of applications": "That is for one application. Multiply by their number.",
  "units upside down": "You converted the wrong way: divide where you multiplied, or the other way around.",
  "forgot to convert": "The units differ. Convert them first.",
  "speed and width alone": "You left out the efficiency. Turning and filling take part of the time.",
  "forgot the area of a core":
    "You left out the area of a sample. Divide the mean count by the area of one core.",
  "speed the wrong way":
    "You used the speed the wrong way around. The faster the machine, the less lands on each area, and the more flow a rate takes.",
  "yards for feet": "Check the units of length: 3 feet make a yard.",
  "distance of one run, time of both":
    "You took the distance of one run and the time of both. Count both distances.",
  "forgot the width": "You left out the width. The ground covered is length times width.",
  "forgot the swath": "You left out the swath. Divide by it.",
  "forgot the distance between widths":
    "You left out the distance between the widths. Multiply by it, and count the first and the last width half.",
  "forgot the depth of water": "You left out the depth. Divide it by the depth that goes down in an hour.",
  "divided by the percent alone":
    "You divided the cost by the percent alone. A markup is added to the cost; with a margin, the cost is what is left of the price.",
  "forgot the length": "You left out the length. The ground covered is length times width.",
  "pressure the wrong way":
    "Flow rises with pressure, and with its square root. You made it fall in proportion.",
  "percentage taken off": "You took the percentage off, or added what is missing. Divide by the percentage.",
  "divided by the area": "You divided by the area. The rate is for one unit of area: multiply.",
  "shared out evenly":
    "That is every load if all are the same. Fill the tank as many times as you can, and take what is left.",
  "whole job for the last load": "That is the spray for the whole job. Subtract the full tanks.",
  "tank times rate":
    "You multiplied the tank by the product rate. First find how much area a tank covers, then multiply that by the rate.",
  "last strip left out": "The last strip is narrower than a swath, but has to be covered, too. Round up.",
  "one pass too many": "You counted one pass too many. Round up once.",
  "half the swath": "You took half of the swath for the whole.",
  "halved twice": "You halved twice. Halve once.",
  "triangle for rectangle": "You took it for a triangle. A rectangle is length times width.",
  "square for circle": "That is the square around the circle. Area = π × radius × radius.",
  "ends left out": "You left out the ends. By the trapezoidal rule the first and the last count half.",
  "cubic feet for cubic yards": "That is cubic feet. A cubic yard is 27 of them.",
  "divided by the depth": "You divided by the depth. Volume = surface × depth.",
  "forgot the dose": "You took 1 mg/L. Multiply by the dose in the question.",
  "decimal point one place off": "The decimal point is in the wrong place. Count the places again.",
  "divided by 0.623": "You divided by 0.623. A depth on an area is that many gallons: multiply.",
  "multiplied by the rate":
    "You multiplied by the rate. To get a time, divide by what there is in an hour or in a day.",
  "driest against wettest":
    "You compared the driest cans with the wettest. Compare them with the mean of all.",
  "the part that stays": "You took the part that stays in the soil. Take the part that may be used up.",
  "subtracted the losses": "You subtracted the losses one by one. Multiply the two percentages.",
  "live seed for bulk seed":
    "That is the live seed. The bag also holds what does not grow: divide by the live share.",
  "share that stays": "That is the share that stays. The question asks for what comes off.",
  "whole height again":
    "You let the grass double. A third of the standing grass is half of the height of cut.",
  "three times the cut": "You multiplied by 3. Two thirds stay: height = cut × 3 ÷ 2.",
  "one plant a unit of area": "You took one plant for each unit of area. It depends on the spacing.",
  "forgot the extra": "You left out the extra for losses.",
  "low for mean": "You used the low of the day. Take the mean of high and low.",
  "one day only": "That is one day only. Add up all of them.",
  "what is used for what is left": "That is what went down. Subtract it from the limit.",
  "acre as 1,000 sq ft times 10": "You took an acre for 10 times 1,000 sq ft. It is 43.56 times 1,000 sq ft.",
  "water weight for the liquid":
    "You took 8.34 lb a gallon, which is water. The product has its own density.",
  "forgot the price": "That is the amount. The question asks what it costs: multiply by the price.",
  "width upside down": "You turned the ratio of band and row upside down. The band is the smaller part.",
  "whole row for the band": "That is the rate on the band itself. Over the whole field, less is used.",
  "ratio without the root": "Take the square root of the ratio of the densities.",
  "density the wrong way": "You turned the ratio of densities upside down.",
  "one side for both": "You used one of the parallel sides for both. Take their mean.",
  "sum of the sides": "You added the parallel sides without halving. Take their mean.",
  "flow over time": "You left out the area. Depth per hour = flow divided by area.",
  "linear decay":
    "You took off the same amount in each half-life. Each half-life leaves half of what is left.",
  "one half-life too few": "You counted one half-life too few. Divide the time by the half-life.",
  "one half-life too many": "You counted one half-life too many. Divide the time by the half-life.",
  "share that is gone": "That is the share that is gone. The question asks for what is left.",
  "one rinse only": "That is after one rinse. Each rinse leaves the same share of what was there before.",
  "all water at once": "You used all the water at once. The rinses are done one after the other.",
  "hours upside down": "You divided the wrong way around. Time = area divided by area per hour.",
  "root of the sum": "Halve the sum of calcium and magnesium before you take the root.",
  "two times for any layer":
    "You doubled the parts per million. That holds only for a layer of 2,000,000 lb an acre, or 2,000,000 kg a hectare.",
  "efficiency taken off":
    "You subtracted the efficiency. It is the part that is left: multiply what the machine could cover by it.",
  "divided by the number of rinses":
    "You divided by the number of rinses. Each rinse leaves the same share of what was there before.",
  "heights in proportion": "Wind does not rise in step with height. Use the ratio that is given.",
  "rate for 100 as for one":
    "You multiplied the whole tank by the rate. The rate is for 100 gal or 100 L: divide by 100 first.",
  "forgot to divide by the cores": "You used the sum of all cores as one core. Take the mean.",
  "all energy for light": "You took all of the energy for light. About half of it is.",
  "wind at the station": "That is the wind at the height of the station. Near the ground there is less.",
  "heights the wrong way": "You swapped the two heights. Near the ground there is less wind, not more.",
  "rounded applications down": "You rounded down: each application would then be over the most at one time.",
  "lead time only": "You left out the stock that is kept back.",
  "stock kept back only": "You left out what is used until the delivery comes.",
  "use of the whole time":
    "You took the use over the whole time. Only the use until the delivery comes counts.",
  "product for season's total":
    "You added pounds or kilograms of product. The total is of nitrogen: multiply each by its percentage.",
  "one entry only": "That is one application only. Add both.",
  "mean of the percentages": "You used the mean of the percentages. Each product has its own.",
  "half of the range":
    "You took half of the range for the standard deviation. For two readings, divide the range by the square root of two.",
  "deviation for variation": "That is the standard deviation. Divide it by the mean.",
  "the part that stays untreated": "That is the share of the ground between the bands.",
  "one part to the other": "You divided by the water alone. The spray that stayed is a part of the mix, too.",
  "potash for potassium": "That is potash (K2O). The question is about potassium (K): K × 1.2 = K2O.",
  "oxide for element":
    "That is phosphate (P2O5). The question asks for the phosphorus (P) in it: multiply by 0.4364.",
  "one bag only": "That is one bag only. Multiply by the number of bags.",
  "rounded for each application":
    "You rounded up for each application. What is left in a jug goes into the next: add up the season first.",
  "time left out": "You left out the time. Flow is what is caught, divided by the time.",
  "ratio without a root": "You left out the square root.",
  "one ion left out": "You left out magnesium. Calcium and magnesium both count.",
  "added instead of multiplied": "You added where you should multiply.",
  "range for deviation": "You took the range for the standard deviation.",
  "one application too many": "You took one application too many. Round up once.",
  "half of the most at one time": "You took half of what one application may have.",
  "forgot the most at one time": "You left out the most at one time. Divide the total by it, and round up.",
  "one rinse too many": "You counted one rinse too many.",
  "counted every nozzle":
    "You multiplied by the number of nozzles. The flow and the spacing are both for one nozzle.",
  "one reading left out": "You left out a reading.",
} as const;

/** The name of a mistake that people really make. */
export type NameOfMistake = keyof typeof told;

/** The mistakes that problems know, by name, each with what a learner is told who made it. */
export const mistakes: Readonly<Record<NameOfMistake, string>> = /* @__PURE__ */ frozen(told);
