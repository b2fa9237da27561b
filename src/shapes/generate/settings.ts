// What is derived, and what the types alone can't say? The only list that is kept by hand.
// Follows the public faces of the modules. Does not cover how a type becomes a shape: derive.ts.

/** The modules whose functions travel, from the ground up: a shape stands with the highest module that it names. */
export const modules = [
  "quantity",
  "sources",
  "assessment",
  "shapes",
  "refrigerants",
  "line-set",
  "pressure-test",
  "vacuum-decay",
  "circuit-protection",
  "supply-voltage",
  "flare-joint",
  "condensate",
  "charge-limit",
  "operating-check",
  "commissioning",
  "planning",
] as const;

/** Objects that the library holds: the constant of `src/wire/named.ts` that lists them by name. */
export const named: Readonly<Record<string, { readonly table: string; readonly alone: boolean }>> =
  {
    // Holds coefficients and nothing of the caller's; a part of it may also come by its fields.
    Refrigerant: { table: "byDesignation", alone: true },
    // Holds units, which are functions.
    CircuitRules: { table: "byRules", alone: true },
    VoltageStandard: { table: "byStandard", alone: false },
    AcceptancePolicy: { table: "byPolicy", alone: false },
  };

/** Types that a function's own type can't say, by the codec. */
export const instead: Readonly<Record<string, string>> = {
  // The type parameter says no more than that both tubes are alike.
  identifyLinesInput: "{ readonly a: Tube | TubeSize; readonly b: Tube | TubeSize }",
  identifyLinesResult: "LinePair<Tube | TubeSize>",
  // A function can't travel; the refrigerant whose curve it is does.
  liquidLineSubcoolingInput:
    "Omit<LiquidSubcoolingInput, 'bubbleTemperature'> & { readonly refrigerant: Refrigerant }",
};

/** Types that travel and are no argument or result of a function, by the codec. */
export const besides: Readonly<Record<string, { readonly module: string; readonly type: string }>> =
  { changeCodec: { module: "commissioning", type: "Change" } };

/** What does not travel, and why. */
export const stays: Readonly<Record<string, string>> = {
  saturationArray: "bare arrays of figures; typed arrays pass to a worker as they are",
  createDecayMonitorResult: "an object that works; its readings and its verdicts travel",
  refrigerantByDesignation: "its argument is the form in which a refrigerant travels",
  tableAsCsv: "the table has a codec; the number of decimals is no data",
  tableAsMarkdown: "the table has a codec; the number of decimals is no data",
  amend: "the record and the change have a codec each",
  recordRevision: "the record has a codec",
  supplyName: "a name is a text",
  checkRecord: "the record has a codec",
  completeRecord: "the record has a codec",
  manualCharge: "the record has a codec, and so has the verdict of the rule",
  hasNominalLength: "the record has a codec",
  circuitRulesNamed: "a rule set travels by its name",
  usualAirDifference: "two figures of the library",
  holdsAhead: "statements of the library for a construction",
  fromVersion1: "its argument is the form in which the record of the first version travels",
  assessInstallationInput: "the record has a codec",
  planInstallationInput: "the record has a codec",
};

/** Forms that a field has beyond its type. */
export const forms: Readonly<Record<string, string>> = {
  "Amendment.path": '"path"',
  "Amendment.previous": '{ at: "path" }',
};
