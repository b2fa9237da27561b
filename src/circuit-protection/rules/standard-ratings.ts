// Which sizes of breaker and fuse are made? The standard ampere ratings and how to round to them.
// Follows NFPA 70 (2023), 240.6(A), table 240.6(A).
// Does not cover adjustable-trip breakers, 240.6(B) and (C).
import { twelveDigits } from "../../quantity/twelve-digits.ts";

/** NFPA 70, table 240.6(A), from 15 A. There is no 55, 65, 75, 85, 95 or 120 A. */
export const standardRatings: readonly number[] = [
  15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350,
  400, 450, 500, 600, 700, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000,
];

/** The largest standard rating that does not exceed a current. */
export const ratingAtMost = (amperes: number, ratings: readonly number[]): number | undefined =>
  ratings.filter((rating) => rating <= twelveDigits(amperes)).at(-1);

/** The smallest standard rating that is not below a current. */
export const ratingAtLeast = (amperes: number, ratings: readonly number[]): number | undefined =>
  ratings.find((rating) => rating >= twelveDigits(amperes));
