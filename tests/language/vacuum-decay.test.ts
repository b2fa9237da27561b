// The verdict on a vacuum: all that it says, with its values. By itself, so that a change of the module is tried on it.
import { vacuumDecay } from "hvac-install-math/language/en";
import { inputs } from "./inputs/vacuum-decay.ts";
import { walk } from "./walk.ts";

walk({ module: "vacuum-decay", catalogue: vacuumDecay, further: inputs });
