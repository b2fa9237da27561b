/**
 * The bibliography: every standard, handbook and paper that the library cites, once.
 *
 * @module sources
 */
export { bibliography, type Source, type SourceId, sourceById } from "./bibliography.ts";
