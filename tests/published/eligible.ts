/** `fert-001`, `fert-003` of `"fert"` and `"001 003"`. */
const ids = (kind: string, numbers: string): readonly string[] =>
  numbers.split(" ").map((number) => `${kind}-${number}`);

/**
 * The published examples that a check could be made of: read in the source, with an answer that is printed there.
 *
 * The rule. An example is in the list where its source was read and prints the answer, in full or in part,
 * also where the answer is rounded coarsely or wrong: then the check says so. It is not in the list where the
 * answer was derived by hand, is remembered, or was not seen in the copy that was read, and where the source
 * states a rule, an order or a meaning without a figure to compute: those are held by the tests of the rooms.
 *
 * By the room whose formulas it exercises; an example that asks two rooms stands in both.
 */
export const eligible: Readonly<Record<string, readonly string[]>> = {
  quantity: [
    ...ids("fert", "018 019"),
    ...ids("interval", "021 022 030 038"),
    ...ids("site", "079 082"),
    ...ids("soil", "037 043 102"),
    ...ids("spray", "043 077"),
    ...ids("spread", "028"),
    ...ids("quantity", "001 002 003"),
  ],
  numeric: [...ids("spread", "041")],
  nutrient: [
    ...ids(
      "fert",
      "001 003 004 006 007 008 009 010 011 012 013 015 016 018 019 021 022 023 024 025 028 029 030 031 032 034 035 036 037 039 040 045 046 051 052 054 055 057 058 060 061 063 064 066 067 069 072 073 075 076 078 079 081 083 084",
    ),
    ...ids("soil", "040 042 078 079 081 082 099"),
  ],
  spray: [
    ...ids("soil", "072 075 084 085 087 091 096 097 099 100"),
    ...ids(
      "spray",
      "001 003 004 006 007 009 010 012 013 015 016 018 019 021 022 023 024 025 027 028 030 031 033 034 035 036 038 039 040 043 046 048 057 058 060 061 064 067 072 073 076 077",
    ),
  ],
  spread: [
    ...ids(
      "spread",
      "001 003 004 006 007 009 010 012 013 015 016 018 019 021 022 024 025 027 028 030 031 033 034 036 038 039 040 041 042 043 044 045 046 048 049 051 052 053 054 055",
    ),
  ],
  tank: [
    ...ids(
      "mix",
      "025 034 036 039 040 042 044 045 047 048 049 054 055 056 057 058 060 061 063 064 066 069 070 072 073 075 076 077 078 079 080 081 085",
    ),
    ...ids("soil", "084 085 087 088 090 100"),
    ...ids("spray", "015 022 042 045 046 048 049 051 052 053 054 055 061 063 064 069 070"),
  ],
  interval: [
    ...ids(
      "interval",
      "001 003 004 006 007 009 010 012 013 015 016 018 021 022 024 025 028 029 030 034 036 037 038 039 042 045 049 051 053 054 055 056 062 068 070 083 084",
    ),
    ...ids("soil", "066 067 068"),
  ],
  site: [
    ...ids(
      "site",
      "001 003 004 005 006 007 009 010 012 013 015 016 018 019 021 022 023 024 025 027 028 031 033 034 036 037",
    ),
    ...ids("site", "160 161 162"),
    ...ids("soil", "093 094"),
    ...ids("spread", "025 048 049 051 052"),
  ],
  stand: [
    ...ids("interval", "071 072 073"),
    ...ids("site", "039 040 042 043 044 045 048 049 050 051 054"),
    ...ids(
      "stand",
      "001 002 003 004 005 006 007 008 009 010 011 012 013 014 015 016 017 018 019 020 021 022 023 024 025 026 027 028 029 030 031 032 033 034 038 039",
    ),
  ],
  water: [
    ...ids("site", "055 057 058 060 061 063 064 066 067 069 070 072 073 075 076 078"),
    ...ids("site", "083 084 086 087 088 089 090 091 092 093 094"),
    ...ids("water", "001 002 003 004 005 006 007 008 009 010 011 012 013"),
    ...ids("soil", "031 045 046 103"),
  ],
  soil: [
    ...ids(
      "soil",
      "001 003 004 006 007 010 012 013 015 016 017 018 019 023 024 025 026 028 030 034 036 037 039 043 104 105 106 107 108 109 110 111 112 113 114 115 117 118 119 120 121",
    ),
  ],
  plan: [
    ...ids("limits", "001 002 003 004"),
    ...ids("rotation", "001 002 003 004 005 006 007 008 009 010 011 012 013 014 015 016 017 018"),
    ...ids("interval", "037 038 039 062"),
    ...ids("soil", "048 049 050 051 052 055 056 057 058 059 060 061 062 063 064 066 067 068 069 070"),
  ],
  weather: [...ids("weather", "001 002 003 004 005 006 007 008 009 010 011")],
  pest: [...ids("pest", "001 002 003 004 005")],
  indicator: [...ids("indicator", "001 002 003")],
  price: [...ids("price", "001 002 003 004 006 007 008")],
};
