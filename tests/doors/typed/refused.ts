/** Texts that are no amount of their field, that may mean several things, or that nobody can read: none is taken. */
export const refusedTexts: Readonly<Record<string, string>> = {
  "nitrogen rate": `
1 lb N/MM | 0.5# N | 44 lb a. | 44 ppa | 50 kg N.ha-1 | 50 units N/ac | 50 units of N per acre | 1 lb K2O/M
1 lb per hundred sq ft | 1 lb/1,00 ft2 | 1 lb/1.000 ft2 | 1 kg/1000 | 1 lb N / 1,000 sq ft / month | 1 lb N/M/mo
1 lb N per 1000 sq ft per yr | 1 lb P/M | 1 lb/M P2O5 | 1 lb N & K/M | 1 lb slow N/M | 2 x 0.5 lb/M | 4 lb @ acre
`,
  "dry rate": `
3.5 lb/1000s | 4 bags/acre | 6 oz. per 1000 sq. ft. (dry) | 3-4 lb/M | 3 to 4 lb/M | 3 or 4 lb/M | min 3.5 lb/M
3.5 lb/M (half rate) | 3.5 lb/M/pass | 3.5 lb/M/yr | 3..5 lb/M | 3.5 lb | 3.5 | l lb/M | 100 kg/dunam | 1 bag/M
1 bag per 12,500
`,
  "liquid rate": `
3-4 oz/M | 3 - 4 fl oz/1000 | 3 lb/acre
`,
  "spray volume": `
1.5 gpm | 1.5 GPT | 400 lph
`,
  area: `
5000 m | 50 x 100 | 50x100 | 1 football field | 18 holes | 5,000 | 5000 sq. | 5000 square | 5000 square fet
5 M ft | 100 qm | 1 hect | 1 sq mi | 1 section | 50 X 100 | 50 yd x 100 ft
`,
  length: `
3-2 | .1 mil | 1 m 20 | 1m20 | 1/100 in | 125/1000 in | 0.125 | 0.125 mils | 30 thou | 10 rods
`,
  liquid: `
1 drum | 5 gal / 19 L | 5 gal or 19 L | 5 g | 5 G | 5 gl | 5 glns | 5 kgal | 5 MG | 3 TB | 3 oz wt | 3 lb | 3 gills
`,
  weight: `
8 onces | 1 fl oz | 1 lb 20 | 1 kg 200 | thirty lb | a ton | half a ton | 1 00 lb | 1,0000 lb | 10,00,000 lb
12..5 lb | 12.5.1 lb | .5. lb | 5 lb 5 lb | 5 5 lb | 5lbs/bag | 5 lbs per bag | 5 lb/bag | 5 lb N | 5 lb ea
5 lb ea. | 2 bags
`,
  temperature: `
68 | low 60s | 60s F | 32
`,
  time: `
30' | 45" | 1:30 | 14-21 days | 1 month | 7:30a | 7 A | 6 months | 1 yr | 1 season | 24 hr REI | 24 hours after
48 hrs before | 1'30" | 20 S
`,
  concentration: `
1:100 | 1 : 100 | 1 to 100 | 1 in 100 | 1% | 2 fl. oz. per gal. of water | 1:64 | 1:64 dilution
1 pt/hundred gallons | 0.25 v/v | .25% vv
`,
  flow: `
38 oz in 30 sec | 0.4 gpm @ 40 psi
`,
  density: `
8.34 ppg | 1.2 SG | 9.2 lb/g
`,
  active: `
4L | 4 lb ae/gal
`,
  content: `
46 | 46-0-0 | 0.46 | 46% v/v
`,
  money: `
12 bucks | €12 | 12.5 | $ 3 . 50 | ($3) | 75c | $1M
`,
  price: `
$24/bag | $420/ton | $25 a bag | .50/lb | 50c/lb | $500 per ton
`,
  "seed rate": `
6 lbs PLS/1000
`,
  slope: `
3:1 | 1 ft in 50 ft | 45°
`,
  count: `
12 nozzles | a dozen | 12 heads | 12 x | 1 dozen | twelve
`,
  any: `
3 ft 2 | 6 oz | 2 T | 6 oz/1000 | 3 M | 3 lb ft | 3 ft lb | 3 ft 3 | 100 ft 2 | 3 oz/gal
`,
  pressure: `
1 atm | 92 ft of head | 92 feet head
`,
  speed: `
200 ft in 34 sec
`,
  "depth per time": `
0.2 ipd
`,
  share: `
85% humidity | 50 50
`,
  "active rate": `
0.25 lb a.e./acre | 0.25 #ai/A
`,
  conductivity: `
0.8 mmhos | 0.8 dSm-1
`,
  "water test": `
10 mg/L NO3-N
`,
  "seed dressing": `
4 oz/100 lb seed
`,
};
