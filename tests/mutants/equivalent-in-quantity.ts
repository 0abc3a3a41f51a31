// Changes of the room quantity that no test can notice; see equivalent-list.ts.

/** The list, by file. */
export const equivalentsInQuantity: readonly {
  readonly file: string;
  readonly was: string;
  readonly is: string;
  readonly why: string;
}[] = [
  ...(
    [
      ["known.has(text)", "false"],
      ["sound && known.size < mostKnown", "false"],
      ["known.size < mostKnown", "true"],
      ["known.size < mostKnown", "false"],
      ["known.size < mostKnown", "known.size <= mostKnown"],
      ["known.size < mostKnown", "known.size >= mostKnown"],
    ] as const
  ).map(([was, is]) => ({
    file: "src/quantity/substance/substances.ts",
    was,
    is,
    why: "a text that was found sound is looked at again, or not: the same is found",
  })),
  ...(
    [
      ["/^[\\x21-\\x7e]+(?: [\\x21-\\x7e]+)*$/", "/^[\\x21-\\x7e](?: [\\x21-\\x7e]+)*$/"],
      ["/^[\\x21-\\x7e]+(?: [\\x21-\\x7e]+)*$/", "/^[\\x21-\\x7e]+(?: [\\x21-\\x7e]+)$/"],
      ["/^[\\x21-\\x7e]+(?: [\\x21-\\x7e]+)*$/", "/^[\\x21-\\x7e]+(?: [\\x21-\\x7e])*$/"],
      ['typeof input === "string" && plain.test(input)', "false"],
    ] as const
  ).map(([was, is]) => ({
    file: "src/quantity/errors/expect-name.ts",
    was,
    is,
    why: "a plain name goes the longer way, and is found as it is",
  })),
  {
    file: "src/quantity/errors/near-name.ts",
    was: "Math.abs(known.length - written.length) > 2",
    is: "false",
    why: "the letters that one has alone are more than two then, too: a long word is only seen sooner not to be near",
  },
  ...(
    [
      ["/^-?\\d{1,15}$/", "/^-\\d{1,15}$/"],
      ["/^-?\\d{1,15}$/", "/^-?\\d$/"],
      ["/^-?\\d{1,15}\\.\\d{1,15}$/", "/^-\\d{1,15}\\.\\d{1,15}$/"],
      ["/^-?\\d{1,15}\\.\\d{1,15}$/", "/^-?\\d\\.\\d{1,15}$/"],
      ["/^-?\\d{1,15}\\.\\d{1,15}$/", "/^-?\\D{1,15}\\.\\d{1,15}$/"],
      ["/^-?\\d{1,15}\\.\\d{1,15}$/", "/^-?\\d{1,15}\\.\\d$/"],
      ["/^-?\\d{1,15}\\.\\d{1,15}$/", "/^-?\\d{1,15}\\.\\D{1,15}$/"],
      ['plainDigits.test(value) || (decimal === "." && plainDecimals.test(value))', "false"],
      [
        'plainDigits.test(value) || (decimal === "." && plainDecimals.test(value))',
        'plainDigits.test(value) && decimal === "." && plainDecimals.test(value)',
      ],
      ['decimal === "." && plainDecimals.test(value)', "false"],
    ] as const
  ).map(([was, is]) => ({
    file: "src/quantity/border/parts.ts",
    was,
    is,
    why: "plain digits are read letter by letter, as every number is, and come to the same",
  })),
  {
    file: "src/quantity/border/words.ts",
    was: "read.divisor < 1",
    is: "read.divisor <= 1",
    why: "a divisor of 1 was ruled out before",
  },
  ...(
    [
      ["unit.length > 64", "false", "no unit is so long: a longer text is only refused sooner"],
      ["unit.length > 64", "unit.length >= 64", "no unit is so long: a longer text is only refused sooner"],
      ["seen", "false", "a unit is taken apart anew, and comes to the same"],
      ["cache.size < 5000", "true", "a unit that is not kept is taken apart anew"],
      ["cache.size < 5000", "cache.size <= 5000", "a unit that is not kept is taken apart anew"],
      ["cache.size < 5000", "cache.size >= 5000", "a unit that is not kept is taken apart anew"],
      ['"1"', '""', "no number at all is the size 1 too"],
    ] as const
  ).map(([was, is, why]) => ({ file: "src/quantity/unit/units.ts", was, is, why })),
  ...(
    [
      [
        "/^money:[A-Z]{3}/",
        "/money:[A-Z]{3}/",
        "what has its currency further back is no dimension either way",
      ],
      [
        "/^(money:[A-Z]{3})(?:\\/(.+))?$/",
        "/(money:[A-Z]{3})(?:\\/(.+))?$/",
        "the text is a dimension: money stands at its front",
      ],
      [
        "/^(money:[A-Z]{3})(?:\\/(.+))?$/",
        "/^(money:[A-Z]{3})(?:\\/(.+))?/",
        "the text is a dimension: what stands behind the slash goes to its end",
      ],
    ] as const
  ).map(([was, is, why]) => ({ file: "src/quantity/unit/units-of.ts", was, is, why })),
  {
    file: "src/quantity/unit/arithmetic.ts",
    was: "seen",
    is: "false",
    why: "how two units go together is found anew, and is the same",
  },
  ...(
    [
      ["text === latest", "false"],
      ["known", "false"],
      ['"mass/area"', '""'],
    ] as const
  ).map(([was, is]) => ({
    file: "src/quantity/unit/units-of.ts",
    was,
    is,
    why: "a text that was found to be a dimension is looked at again: the same is found",
  })),
  {
    file: "src/quantity/value/expect-quantity.ts",
    was: "wanted !== sound",
    is: "true",
    why: "what is expected and was found sound is looked at again: the same is found",
  },
  {
    file: "src/quantity/errors/expect-fields.ts",
    was: "sound",
    is: "false",
    why: "a sound record goes the longer way, and is found sound",
  },
  ...(
    [
      ["copies.given.length < few", "true"],
      ["copies.given.length < few", "false"],
      ["copies.given.length < few", "copies.given.length <= few"],
      ["copies.given.length < few", "copies.given.length >= few"],
    ] as const
  ).map(([was, is]) => ({
    file: "src/quantity/errors/plain-copy.ts",
    was,
    is,
    why: "which of the two lists a copy stands in decides only how soon it is found",
  })),
];
