// Where a bad value may be overlooked, or an error may speak of another place, and why.

/** "function place = bad value" by its beginning or a pattern, and the reason. */
export const exceptions: readonly (readonly [RegExp, string])[] = [
  [/^quantity\.(isQuantity|isInvalidInputError|sameQuantity) /, "it is asked about any value"],
  [/^quantity\.(toPlain|revive) /, "any data pass; what they mean, a codec checks"],
  [/^field-text\.isFieldTextError /, "it is asked about any value"],
  [/^quantity\.fromJSON kind/, "the error speaks of the json, which has to be of this kind"],
  [/^quantity\.(product|quotient) .*another kind/, "the pair is at fault, not one of the two"],
  [/^quantity\.Quantity\./, "a method speaks of itself and of its unit: `plus`, `psig`"],
  [/^quantity\.Quantity\.dividedBy divisor = a bare number/, "a number is a divisor too"],
  [/^assessment\.conformity input\.value = another kind/, "then its uncertainty does not fit"],
  [/^assessment\.explain said\.code/, "only the text is explained"],
  [/^assessment\.explain said\.values = a trapping object/, "only names in the text are looked up"],
  [/^assessment\.explain said\.values\.drop = ("|a text)/, "a text is a value too"],
  [/^assessment\.explain said\.values\.drop = \[\]/, "a list of none is a list"],
  [/^assessment\.explain language\.messages/, "the error names the code that has no sentence"],
  [/^charge-limit\.carbonDioxideEquivalent .*\.(ar5|standing)/, "not the report that is asked for"],
  [/^condensate\.planDrain input\.route\.pumped/, "the plan itself says whether it is pumped"],
  [/^property-model\.mixture input\.pairs\[0\]\./, "a pair of other fluids is not used"],
  [/^property-model\.mixture input\.pairs\[0\] = a (function|symbol)/, "not used"],
  [/^assessment\.explain said\.values\.drop = (another kind|a bare number)/, "it is a value too"],
  [/^quantity\.fromJSON json\.value = -?1e\+308/, "the unit refuses it by its own name"],
  [/standard = (\{\}|a date): supply\.standard\.table/, "the table is what is missing"],
  [
    /refrigerant = (\{\}|a date): refrigerant\.safetyClass/,
    "what has to be known of it is what is missing",
  ],
  [
    /^(field-text\.parse|read-quantity\.read)Quantity text = /,
    "a place in the text is named by its character",
  ],
  [/^read-quantity\.isFieldTextError /, "it is asked about any value"],
  [/^logs\.readLog text = ("|a text)/, "any text is a log, if one without rows"],
  [/^logs\.guessLog text = ("|a text)/, "any text can be looked at"],
  [
    /^display\.(formatQuantity|shownUnit) quantity = another kind/,
    "it is shown in the units of its kind",
  ],
  [
    /^vacuum-decay\.decayCurve fit\.(shape|timeConstant|line|equalization|aicc|to) /,
    "the curve is drawn from the coefficients",
  ],
  [/^vacuum-decay\.decayCurve fit\.coefficients\.(\w+U|ahead|aicc) /, "the curve does not use it"],
  [
    /^commissioning\.checkRecord .* = (\[\]|\{\}|a date): /,
    "it looks at the form; the steps judge",
  ],
  [/^commissioning\.fromVersion1 record\./, "the codec of the record checks its form"],
  [/^commissioning\.assessInstallation options\.rules\[0\] = a trapping/, "no circuit asks for it"],
  [/^planning\.planInstallation options\.rules\[0\] = a trapping/, "no circuit asks for it"],
  [/^commissioning\.completeRecord files = a trapping/, "only names in the record are looked up"],
  [/^commissioning\.assessInstallation .*value says undefined/, "the reason names what is missing"],
  [/^commissioning\.\w+ .* = polluting keys/, "the error names the field that no record has"],
  [
    /assessPressureTest test\.end\.elapsed = (5e-324|1e-300) h/,
    "the leak through no time is refused",
  ],
  [
    /assessSupplyVoltage .*voltage = (5e-324|1e-300) V: (rest|load):/,
    "the sag is refused by its mean",
  ],
  [/gauge\.resolution = \[null\]: gauge\.resolution\[0\]\.upTo/, "the first range is missing"],
  [/ = (undefined|\{\}|a date): .*is undefined$/, "the caller's own object is handed back"],
  [
    /^commissioning\.\w+ record = (\[\]|\[null\]): names/,
    "open: a list in the place of a record is named by an empty path",
  ],
];
