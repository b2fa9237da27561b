// What is asked of a vacuum: policies and targets, as data.
// A file of its own in the build, so that it is opened without the rest of vacuum-decay.
// Does not cover how a case is judged: the module does.
export * from "./acceptance-policies.ts";
export * from "./evacuation-targets.ts";
