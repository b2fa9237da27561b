// English of what to do next about a circuit.
import type { CircuitProtectionActions } from "../../circuit-protection/statements.ts";
import { type CatalogueOf, type Define, define } from "../define.ts";

const catalogue: Define<CircuitProtectionActions> = define;

/** What to do next about a circuit, in American English. */
export const circuitProtectionActions: CatalogueOf<CircuitProtectionActions> =
  /* @__PURE__ */ catalogue("en-US", {
    "circuit-protection.fit-at-most": "Install a breaker or fuses of {limit} or less.",
    "circuit-protection.fit-between": "Install a breaker or fuses from {from} to {to}.",
    "circuit-protection.fit-fuses": "Install fuses, for example in the disconnect.",
    "circuit-protection.fit-poles": "Install a breaker with {needed} poles.",
    "circuit-protection.fuse-every-line": "Put a fuse in each of the {needed} line conductors.",
    "circuit-protection.give-own-circuit": "Give the unit a circuit of its own.",
    "circuit-protection.fit-marking": "Install a breaker marked {needed} or higher.",
    "circuit-protection.ask-manufacturer": "Ask the manufacturer.",
    "circuit-protection.read-nameplate-again": "Read the nameplate again.",
    "circuit-protection.state-maximum": "Enter the largest fuse from the nameplate or manual.",
    "circuit-protection.state-device": "Enter the installed breaker or fuse.",
    "circuit-protection.state-poles": "Enter the poles of the breaker.",
    "circuit-protection.state-marking": "Enter the voltage marking of the breaker.",
    "circuit-protection.state-conductor": "Enter the installed conductor.",
    "circuit-protection.state-equipment":
      "Enter what the circuit feeds: a compressor, or something else such as a heater.",
    "circuit-protection.state-largest-load": "Enter the rated-load current of the largest load.",
    "circuit-protection.size-conductor-elsewhere":
      "Have the conductor sized by {clause} and the local rules, and record who did.",
    "circuit-protection.fit-conductor": "Install {size} or larger.",
    "circuit-protection.fit-larger-conductor": "Install a larger conductor.",
    "circuit-protection.fit-aluminum-terminals": "Use terminals or connectors marked for aluminum.",
    "circuit-protection.look-at-terminals": "Look at the marking of all terminals.",
    "circuit-protection.fit-grounding": "Install a grounding conductor of {size} or larger.",
    "circuit-protection.fit-grounding-area": "Install a grounding conductor of {area} mm² or more.",
    "circuit-protection.state-fault-energy":
      "Enter the fault current and clearing time, or the device’s let-through energy.",
    "circuit-protection.fit-grounding-wire":
      "Install an equipment grounding conductor of the wire type.",
    "circuit-protection.look-at-fittings":
      "Look whether the raceway has compression fittings or threaded ones.",
    "circuit-protection.fit-disconnect": "Install a disconnect of {needed} or more.",
    "circuit-protection.fit-disconnect-fuses":
      "Install fuses of {limit} or less in the disconnect.",
    "circuit-protection.move-disconnect":
      "Move the disconnect: within sight, readily accessible, clear of the unit’s panels.",
    "circuit-protection.move-disconnect-within": "Move the disconnect to within {limit}.",
    "circuit-protection.fit-lockable-disconnect": "Install a disconnect that can be locked open.",
    "circuit-protection.clear-space":
      "Clear the working space: {depth} deep, {width} wide, {height} high.",
    "circuit-protection.add-receptacle":
      "Install a service receptacle within {limit}, ahead of the unit’s disconnect.",
    "circuit-protection.fit-conductor-for-drop": "Install {size} or larger for the voltage drop.",
    "circuit-protection.shorten-run": "Shorten the run to {longest} or less.",
    "circuit-protection.fit-residual-current":
      "Install a residual-current device of {limit} or less, of a type that the manual allows.",
    "circuit-protection.state-earthing":
      "Enter the earthing system of the supply, TN or TT, and the residual-current device.",
    "circuit-protection.fit-ground-fault":
      "Install listed ground-fault protection that trips at {limit} or less, of a type that the manual allows.",
    "circuit-protection.state-date": "Enter the date of the work.",
    "circuit-protection.state-ground-fault":
      "Enter whether ground-fault protection of {limit} or less is installed, or the adopted text of {clause}.",
    "circuit-protection.comply-and-verify":
      "Change the circuit until it complies with {clause}, {rules}, and have it checked again.",
    "circuit-protection.withdraw-verification":
      "Remove the verification of {clause}, or name a clause that was asked for.",
    "circuit-protection.ask-authority":
      "Have it checked by the text of {rules}, {clause}, and record who checked it.",
    "circuit-protection.add-compressor": "Add the compressor to the loads.",
    "circuit-protection.check-service": "Check voltage, phases and system against the service.",
    "circuit-protection.maximum-below-ampacity":
      "MOP below MCA: the nameplate is misread, or the figures belong to two units.",
  });
