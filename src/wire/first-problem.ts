// What does a failed schema say? Its first issue as the typed error of the library.
// Follows the issues of zod 4. Does not cover more than one mistake: the first is named.
import type * as z from "zod/mini";
import { pathText, refuse, shown } from "./refuse.ts";

type Issue = z.core.$ZodIssue;

/** Of the forms that a value may have, the one that it was meant to have: it gets farthest, with the least to complain of. */
function likeliest({ errors }: z.core.$ZodIssueInvalidUnion): readonly Issue[] {
  const depth = (issues: readonly Issue[]) => Math.max(...issues.map(({ path }) => path.length));
  const [best = []] = [...errors].sort((a, b) => depth(b) - depth(a) || a.length - b.length);
  return best;
}

/** Throws the first problem that the schema found in the value. */
export function throwFirst(issues: readonly Issue[], root: unknown, whole: string): never {
  let path: PropertyKey[] = [];
  let issue = issues[0] as Issue;
  path = [...issue.path];
  while (issue.code === "invalid_union") {
    issue = likeliest(issue)[0] as Issue;
    path.push(...issue.path);
  }
  if (issue.code === "unrecognized_keys") path.push(issue.keys[0] as string);
  const value = path.reduce<unknown>(
    (from, key) => (from as Record<PropertyKey, unknown> | undefined)?.[key],
    root,
  );
  const stated = issue.code === "custom" ? (issue.params?.value as string | undefined) : undefined;
  return refuse(pathText(path, whole), stated ?? shown(value), issue.message);
}
