// In which order are cautions told, and which of two alike? Common practice, no source.
import { expect, it } from "vitest";
import { caution, inOrder } from "../../src/assessment/caution.ts";

it("tells findings, dangers and what governs, and of two alike the first with its place", () => {
  const worn = (path: string) => ({ ...caution("finding", { code: "worn", values: {} }), path });
  const others = caution("governing", { code: "others-govern", values: {} });
  const live = caution("danger", { code: "live", values: {} });
  const told = inOrder([others, worn("joints[0]"), live, worn("joints[3]"), live, others]);
  expect(told).toEqual([worn("joints[0]"), live, others]);
});
