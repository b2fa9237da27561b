// Which voltages may the unit see, and how is a monitor set?
// Follows supply-voltage. Does not cover surges: they need a protective device of their own.
import { cite } from "../assessment/assessment.ts";
import {
  type NominalSupply,
  nameplateVoltageRange,
  type VoltageNameplate,
  voltageMonitorSettings,
} from "../supply-voltage/index.ts";
import { type Job, stated } from "./job.ts";
import { item, type Share, shareOf } from "./share.ts";
import { say } from "./statements.ts";

/** Window and monitor. */
export function supplyShare({ equipment, record }: Job): Share {
  const { ratedVoltages, voltageRange } = equipment;
  const { voltage, phases } = record.power ?? {};
  const needs = {
    "equipment.ratedVoltages": ratedVoltages?.[0],
    "power.voltage": voltage,
    "power.phases": phases,
  };
  const paths = { nameplate: "equipment.ratedVoltages", supply: "power.voltage" };
  const make = (): Share => {
    const nameplate = stated<VoltageNameplate>({ rated: ratedVoltages, range: voltageRange });
    const { minimum: low, maximum: high, printed } = nameplateVoltageRange(nameplate);
    const supply = stated<NominalSupply>({ voltage, phases });
    const monitor = voltageMonitorSettings({ nameplate, supply });
    const source = printed ? cite("manufacturer-manuals") : cite("nema-mg-1", "12.44, from memory");
    const settings = say("planning.monitor", {
      low: monitor.lowCutOut,
      high: monitor.highCutOut,
      trip: monitor.tripDelay,
      reconnect: monitor.reconnectDelay,
    });
    return {
      set: [
        item("supply", say("planning.voltage-window", { low, high }), [source]),
        item("supply", settings, [cite("common-practice")]),
      ],
    };
  };
  return shareOf("supply", needs, make, paths);
}
