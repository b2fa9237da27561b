// Property tests draw the same cases on every run, so that a run can be repeated. To hunt for new ones:
// SEED=random npm test
import fc from "fast-check";

const { SEED } = process.env;
if (SEED !== "random") fc.configureGlobal({ seed: Number(SEED ?? 1976) });
