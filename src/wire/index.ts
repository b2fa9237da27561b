/**
 * JSON in and out: strict codecs for records, inputs and results, and their JSON Schema.
 *
 * @module wire
 */
export {};
