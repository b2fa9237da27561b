import type MiniSearch from "minisearch";
import type { Options } from "minisearch";

/** One page that was found. */
export interface Found {
  readonly id: string;
  readonly title: string;
  readonly url: string;
  readonly kind: string;
  readonly module: string;
  readonly about: string;
  readonly score: number;
}

export declare const options: Options;
export declare function find(index: MiniSearch, typed: string, most?: number): Found[];
export declare function indexFrom(json: string): MiniSearch;
