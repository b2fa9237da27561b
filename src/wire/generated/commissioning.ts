// How do the inputs and results of commissioning travel as JSON?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.
import type {
  assessInstallation,
  Change,
  completeRecord,
  fromVersion1,
} from "../../commissioning/index.ts";
import type { ArgumentsOf, InputOf, ResultOf } from "../arguments-of.ts";
import { type Codec, codecOf } from "../codec.ts";
import {
  ChangeShape,
  CompleteRecordInputShape,
  InstallationAssessmentShape,
  InstallationRecordShape,
} from "./commissioning.shapes.ts";

/** JSON of what `assessInstallation` gives. Source: the library's own format. */
export const assessInstallationResult: Codec<ResultOf<typeof assessInstallation>> =
  /* @__PURE__ */ codecOf({
    id: "assessInstallationResult",
    name: "result",
    shape: InstallationAssessmentShape,
  });

/** JSON of what `completeRecord` takes. Source: the library's own format. */
export const completeRecordInput: Codec<ArgumentsOf<typeof completeRecord, ["record", "files"]>> =
  /* @__PURE__ */ codecOf({
    id: "completeRecordInput",
    name: "input",
    shape: CompleteRecordInputShape,
  });

/** JSON of what `completeRecord` gives. Source: the library's own format. */
export const completeRecordResult: Codec<ResultOf<typeof completeRecord>> = /* @__PURE__ */ codecOf(
  { id: "completeRecordResult", name: "result", shape: InstallationRecordShape },
);

/** JSON of what `fromVersion1` takes. Source: the library's own format. */
export const fromVersion1Input: Codec<InputOf<typeof fromVersion1>> = /* @__PURE__ */ codecOf({
  id: "fromVersion1Input",
  name: "record",
  shape: { each: "any" },
});

/** JSON of what `fromVersion1` gives. Source: the library's own format. */
export const fromVersion1Result: Codec<ResultOf<typeof fromVersion1>> = /* @__PURE__ */ codecOf({
  id: "fromVersion1Result",
  name: "result",
  shape: { each: "any" },
});

/** JSON of a {@link Change}. Source: the library's own format. */
export const changeCodec: Codec<Change> = /* @__PURE__ */ codecOf({
  id: "changeCodec",
  name: "change",
  shape: ChangeShape,
});
