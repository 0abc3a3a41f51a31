/** Rates as people of the trade type them, and what each means, by the field it is typed into: written down by hand. */
export const readRates: Readonly<Record<string, string>> = {
  "nitrogen rate": `
1 lb/1000 ft2 = 1 lb N/M | 1 lb N / M | 1# N/M | 1 # N/M | 1 pound actual N per 1000 | 1 lb actual N/1000
1 lb/1000 ft2 = 1 lb of actual nitrogen per 1000 sq ft | 1 lb N per K | 1 lb N/k | 1 lb/1k | 1 lb/1K sq ft
1 lb/1000 ft2 = 1 lb per 1k sqft | 1 lb/1000sqft | 1 lb/1000sf | 1 lb/1000 sf | 1 lb/ksf | 1 lb/msf | 1 lb/MSF
1 lb/1000 ft2 = 1 LB/1000 SQ FT | 1 Lb./1000 Sq. Ft. | 1lb/1000ft² | 1 lb/1000 ft^2 | 1 lb/1,000 square foot
1 lb/1000 ft2 = 1 lb / 1000 sq feet | 1 lb per one thousand square feet | 1 lb per thousand sq ft
1 lb/1000 ft2 = 1 lb per M sq ft | 10 lb/10,000 ft2 | 10 lb/10M | 10 lb/10 M | 5 lb per 5000 ft2
1 lb/1000 ft2 = 5 lb per 5 thousand | 1e0 lb/M | +1 lb/M | 1 lb /M | 1 lb/ M | 1 lb /1000 sq ft | 1lb N/1000 sq.ft
1 lb/1000 ft2 = 1 lb.N/1000 sq.ft. | 1 lb Nitrogen/1000 Sq Ft | 1 lb nitrogen /1000 | 1 LB N/M | 1 lb. Actual N/M
0.75 lb/1000 ft2 = .75 lbs N per M | 0.75lbs N/1000 | ¾ lb N/1000 sq ft | 3/4 lb. N per 1,000 sq. ft.
0.75 lb/1000 ft2 = 3/4 lb of nitrogen per thousand | 3/4 pound nitrogen per thousand square feet
44 lb/acre = 44 lbs N/ac | 44 lb N/ac. | 44 lbs N/acre | 44 lbs N per A | 44 #/A | 44 #N/A | 44 lbN/A
44 lb/acre = 44 lbs N an acre | 44 lbs. per acre of N
50 kg/ha = 50 kg/ha N | 50 kg N ha-1 | 50 kgs N per hectare
4.9 g/m2 = 4.9 g N m-2 | 4.9 g/m² | 4.9 g/sqm | 4.9 g/sq m | 4.9 gsm | 4.9 g N/square metre
0.5 kg/100 m2 = 0.5 kg/100m2 | 0.5 kg/are
1 oz/1000 ft2 = 1 oz N per 1000
0.5 lb/1000 ft2 = 1/2 lb/1000
1.5 lb/1000 ft2 = 1-1/2 lb/1000
10 lb/1000 ft2 = 1 lb/100 ft2 | 1 lb/100 sq ft | 1 lb per 100 sq. ft.
1 lb/1000 m2 = 1 lb/1000 m2 | 1 lb/1000m2
1 kg/1000 m2 = 1 kg/1000 m2
1 kg/1000 ft2 = 1 kg/M
0.1 lb/1000 ft2 = 0.1 lb.N/M | 1/10 lb N/M
0.125 lb/1000 ft2 = 1/8 lb/M
1 lb/acre = 1 lb N/acre
43.56 lb/acre = 43.56 lb/ac
4 lb/acre = 4 lb/A | 4 lbs/Ac. | 4 lb. /acre.
`,
  "dry rate": `
3.5 lb/1000 ft2 = 3.5 lb/M | 3.5 lbs product/M | 3.5 lb prod/1000 | 3.5 # / 1000 | 3.5#/1000 | 3.5 #/M
3.5 lb/1000 ft2 = 3.5 lbs./1000 sq. ft. | 3.5 lbs/thousand | 3 1/2 lb/M | 3-1/2 lb/M | 3½ lb/M | 3 ½ lb/M
3.5 lb/1000 ft2 = 3.5 lb/M. | 3.5lb./M
150 lb/acre = 150 lbs/acre | 150 lbs / ac | 150lb/ac | 150 pounds/acre
4 lb/1000 ft2 = 50 lb/12,500 sq ft | 50 lbs per 12500 sf
2 t/ha = 2 t/ha | 2 tonnes/ha | 2 metric tons/ha
6 oz/1000 ft2 = 6 oz wt/1000 | 6 oz/M | 6 dry oz/1000 | 6 oz dry/1000 | 6 ozs/M | 6 oz by weight/M
2 t/1000 ft2 = 2 t/M
2 mg/ha = 2 mg/ha
`,
  "liquid rate": `
6 fl oz/1000 ft2 = 6 fl oz/1000 | 6 fl. oz./1000 | 6 fl.oz./M | 6 fl.oz/M | 6 floz/M | 6 FL OZ/M
6 fl oz/1000 ft2 = 6 Fl. Oz. per 1,000 Sq. Ft. | 6 fluid ounces per 1000 | 6 fluid oz. per thousand | 6 liq oz/M
6 fl oz/1000 ft2 = 6 liquid ounces/1000 | 6 oz fl/M
0.37 fl oz/1000 ft2 = 0.37 fl oz/M | .37 fl oz per 1000
11 fl oz/acre = 11 fl oz/ac | 11 floz/ac
1.5 pt/acre = 1.5 pts/ac | 1 1/2 pt/A | 1 1/2 pints per acre | 1.5 pints to the acre
2 qt/acre = 2 qts/acre | 2 qts. per ac | 2 quarts an acre | 2 quart/acre
1 gal/acre = 1 gal/A
0.5 gal/acre = 1/2 gal per acre
2.5 L/ha = 2.5 L/ha | 2.5 l/ha | 2.5 lt/ha | 2.5 ltr/ha | 2.5 litres per hectare | 2.5 lts/ha
250 mL/ha = 250 mls/ha | 250 cc/ha
2 tbsp/1000 ft2 = 2 tbsp/M
2 tsp/1000 ft2 = 2 tsp/M | 2 teaspoons/1000 sq ft
10 mL/100 m2 = 10 ml/100m2 | 10ml per 100 sq m | 10 mL/100 sqm
`,
  "spray volume": `
40 gal/acre = 40 gpa | 40 GPA | 40gpa | 40 g.p.a. | 40 gal/ac | 40 gals/ac | 40 gals. per acre | 40 gallons/acre
40 gal/acre = 40 gallon per acre | 40 Gal./A.
1 gal/1000 ft2 = 1 gal/M | 1 gal/1000 | 1 gal / thousand | 1 gal/K
1.5 gal/1000 ft2 = 1.5 gal/1000sf | 1.5 gal/M sq ft
400 L/ha = 400 l/ha
20 imp gal/acre = 20 imp gal/ac
`,
};
