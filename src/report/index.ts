/**
 * The record of an installation as a report for people: Markdown, and one printable HTML page.
 *
 * @module report
 */
export {};
