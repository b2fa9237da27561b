// Which equation of state stands behind a name, and which paper? Looked up in property-model and the bibliography.
import * as model from "../../property-model/index.ts";
import { bibliography, type Source, type SourceId } from "../../sources/bibliography.ts";

/** A fluid with an equation of its own. */
export type Component = model.PureFluid | model.PseudoPureFluid;

/** The fluid that property-model exports by this name. */
export function componentOf(id: string): Component {
  const found = (model as unknown as Readonly<Record<string, Component | undefined>>)[id];
  if (!found) throw new Error(`src/property-model/index.ts exports no fluid ${id}`);
  return found;
}

/** The paper of its equation: the work of the bibliography with the same DOI. */
export function paperOf(id: string): SourceId {
  const { doi } = componentOf(id).literature;
  const works = Object.entries(bibliography) as (readonly [SourceId, Source])[];
  const found = works.find(([, work]) => work.doi === doi);
  if (!found) throw new Error(`src/sources/bibliography.ts holds no work with the DOI ${doi}`);
  return found[0];
}
