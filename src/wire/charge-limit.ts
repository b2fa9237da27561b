// How do the inputs and results of a room's charge limit travel as JSON?
// Follows the types of charge-limit. A refrigerant goes by its designation, one of the caller's own by what
// the function needs of it. Does not cover concentration: charge-limit-concentration.ts.
import type {
  AnnexGGAnswer,
  areaFromRoomTable,
  ChargeThresholds,
  chargeFromRoomTable,
  IndoorUnitPlace,
  MinimumFloorArea,
  minimumFloorArea,
  RoomChargeAssessment,
  RoomChargeCause,
  RoomChargeInput,
  RoomChargeLimit,
  RoomInstruments,
  RoomRefrigerant,
  RoomTableRow,
  RoomUnit,
  roomChargeLimit,
} from "../charge-limit/index.ts";
import type { Refrigerant } from "../refrigerants/index.ts";
import type { InputOf } from "./arguments-of.ts";
import { type Codec, codecOf } from "./codec.ts";
import { byDesignation } from "./refrigerant-names.ts";
import { citation, instrument, statement, verdict } from "./verdict.ts";
import {
  either,
  type FieldsOf,
  type FormOf,
  list,
  type ObjectOf,
  of,
  words,
} from "./wire-shape.ts";

/** A safety class. */
export const safetyClass = (): FormOf<Refrigerant["safetyClass"]> =>
  words<Refrigerant["safetyClass"]>({
    A1: true,
    A2L: true,
    A2: true,
    A3: true,
    B1: true,
    B2L: true,
    B2: true,
    B3: true,
  });

/** A refrigerant by its name, one of the caller's own by what a room asks of it. */
export const refrigerant = (): FormOf<RoomRefrigerant> =>
  either(byDesignation(), of<RoomRefrigerant>({ designation: "text", safetyClass: safetyClass() }));

const unit = (): FieldsOf<RoomUnit> => ({
  refrigerant: refrigerant(),
  "lowerFlammabilityLimit?": "density",
  "place?": words<IndoorUnitPlace>({ floor: true, window: true, wall: true, ceiling: true }),
  "installationHeight?": "length",
  "releaseOffset?": "length",
  "edition?": words<NonNullable<RoomUnit["edition"]>>({ "2018": true, "before-2018": true }),
});

const answer = (): FieldsOf<AnnexGGAnswer> => ({
  unrestricted: "mass",
  maximum: "mass",
  releaseHeight: "length",
  lowerFlammabilityLimit: "density",
  assumptions: list(statement()),
  cautions: list(statement()),
  sources: list(citation()),
});

const roomLimit = (): ObjectOf<RoomChargeLimit> =>
  of<RoomChargeLimit>({
    limit: "mass",
    byFormula: "mass",
    decidedBy: words<RoomChargeLimit["decidedBy"]>({
      unrestricted: true,
      "floor-area": true,
      cap: true,
      m2: true,
    }),
    ...answer(),
  });

const row = (): ObjectOf<RoomTableRow> => of<RoomTableRow>({ area: "area", charge: "mass" });

/**
 * JSON of what `assessRoomCharge` takes.
 *
 * Source: the library's own format.
 *
 * @example
 * ```ts
 * import { kg, m2 } from "hvac-install-math/quantity";
 * import { R32 } from "hvac-install-math/refrigerants";
 * import { assessRoomChargeInput } from "hvac-install-math/wire";
 *
 * const unit = { refrigerant: R32, place: "floor", charge: kg(2.1), floorArea: m2(40) } as const;
 * const text = assessRoomChargeInput.stringify(unit);
 * text.slice(0, 37); // => {"refrigerant":"R-32","place":"floor"
 * assessRoomChargeInput.parse(text).refrigerant === R32; // => true
 * ```
 */
export const assessRoomChargeInput: Codec<RoomChargeInput> =
  /* @__PURE__ */ codecOf<RoomChargeInput>({
    name: "input",
    shape: () =>
      of<RoomChargeInput>({
        ...unit(),
        charge: "mass",
        floorArea: "area",
        "instruments?": of<RoomInstruments<"area">>({
          "charge?": instrument<"mass">("mass"),
          "size?": instrument<"area">("area"),
        }),
        "confidence?": "number",
      }),
  });

/** JSON of what `assessRoomCharge` gives. Source: the library's own format. */
export const assessRoomChargeResult: Codec<RoomChargeAssessment> =
  /* @__PURE__ */ codecOf<RoomChargeAssessment>({
    name: "result",
    shape: () =>
      of<RoomChargeAssessment>({
        ...verdict(),
        "cause?": words<RoomChargeCause>({ "room-too-small": true, "beyond-m2": true }),
        limit: roomLimit(),
      }),
  });

/** JSON of what `chargeThresholds` gives. Source: the library's own format. */
export const chargeThresholdsResult: Codec<ChargeThresholds> =
  /* @__PURE__ */ codecOf<ChargeThresholds>({
    name: "result",
    shape: () =>
      of<ChargeThresholds>({ m1: "mass", m2: "mass", m3: "mass", unrestrictedA2L: "mass" }),
  });

/** JSON of what `roomChargeLimit` takes. Source: the library's own format. */
export const roomChargeLimitInput: Codec<InputOf<typeof roomChargeLimit>> = /* @__PURE__ */ codecOf<
  InputOf<typeof roomChargeLimit>
>({
  name: "room",
  shape: () => of<InputOf<typeof roomChargeLimit>>({ ...unit(), floorArea: "area" }),
});

/** JSON of what `roomChargeLimit` gives. Source: the library's own format. */
export const roomChargeLimitResult: Codec<RoomChargeLimit> =
  /* @__PURE__ */ codecOf<RoomChargeLimit>({ name: "result", shape: roomLimit });

/** JSON of what `minimumFloorArea` takes. Source: the library's own format. */
export const minimumFloorAreaInput: Codec<InputOf<typeof minimumFloorArea>> =
  /* @__PURE__ */ codecOf<InputOf<typeof minimumFloorArea>>({
    name: "room",
    shape: () => of<InputOf<typeof minimumFloorArea>>({ ...unit(), charge: "mass" }),
  });

/** JSON of what `minimumFloorArea` gives. Source: the library's own format. */
export const minimumFloorAreaResult: Codec<MinimumFloorArea> =
  /* @__PURE__ */ codecOf<MinimumFloorArea>({
    name: "result",
    shape: () => of<MinimumFloorArea>({ area: "area", byFormula: "area", ...answer() }),
  });

/** JSON of what `chargeFromRoomTable` takes. Source: the library's own format. */
export const chargeFromRoomTableInput: Codec<InputOf<typeof chargeFromRoomTable>> =
  /* @__PURE__ */ codecOf<InputOf<typeof chargeFromRoomTable>>({
    name: "table",
    shape: () => of<InputOf<typeof chargeFromRoomTable>>({ rows: list(row()), floorArea: "area" }),
  });

/** JSON of what `areaFromRoomTable` takes. Source: the library's own format. */
export const areaFromRoomTableInput: Codec<InputOf<typeof areaFromRoomTable>> =
  /* @__PURE__ */ codecOf<InputOf<typeof areaFromRoomTable>>({
    name: "table",
    shape: () => of<InputOf<typeof areaFromRoomTable>>({ rows: list(row()), charge: "mass" }),
  });
