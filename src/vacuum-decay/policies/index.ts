// What is asked of a vacuum? Policies and targets, opened without the rest of the module.
// Follows the source that each names. Does not cover how a log is judged by them.
export * from "./acceptance-policies.ts";
export * from "./evacuation-targets.ts";
