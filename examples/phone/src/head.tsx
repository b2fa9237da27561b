// The head of the page: what this is, whose nameplate it has, language, units, and the way to the screens.
import type { Equipment } from "hvac-install-math/commissioning";
import type { UnitSystem } from "hvac-install-math/display";
import type { ReactElement } from "react";
import type { ScreenName } from "./app.tsx";
import type { Choice, Reader, Tongue } from "./reader.ts";

const tongues = { en: "English", es: "Español", fr: "Français" } as const;
const systems = { "inch-pound": "ft, psi, °F", SI: "m, kPa, °C" } as const;
const screens: readonly ScreenName[] = ["plan", "nitrogen", "vacuum", "report"];

export interface HeadProps {
  readonly reader: Reader;
  readonly screen: ScreenName;
  readonly plate: Equipment | undefined;
  readonly onChoice: (choice: Choice) => void;
}

export function Head({ reader, screen, plate, onChoice }: HeadProps): ReactElement {
  const { tongue, system, words } = reader;
  return (
    <header>
      <h1>{words.title}</h1>
      <p className="invented">{words.invented}</p>
      <p className="choices">
        <Menu
          label={words.language}
          value={tongue}
          names={tongues}
          onChange={(one) => onChoice({ tongue: one as Tongue, system })}
        />
        <Menu
          label={words.units}
          value={system}
          names={systems}
          onChange={(one) => onChoice({ tongue, system: one as UnitSystem })}
        />
      </p>
      <details>
        <summary>{words.nameplate}</summary>
        <p>
          {plate?.outdoorUnit?.model} · {plate?.refrigerant} · {plate?.factoryCharge?.toString()} ·{" "}
          {plate?.minimumCircuitAmpacity?.toString()} /{" "}
          {plate?.maximumOvercurrentProtection?.toString()}
        </p>
      </details>
      <nav>
        {screens.map((name) => (
          <a key={name} href={`#${name}`} aria-current={name === screen ? "page" : undefined}>
            {words[name]}
          </a>
        ))}
      </nav>
    </header>
  );
}

function Menu({
  label,
  value,
  names,
  onChange,
}: {
  readonly label: string;
  readonly value: string;
  readonly names: Readonly<Record<string, string>>;
  readonly onChange: (value: string) => void;
}): ReactElement {
  return (
    <label>
      {label}
      <select value={value} onChange={({ target }) => onChange(target.value)}>
        {Object.entries(names).map(([key, name]) => (
          <option key={key} value={key}>
            {name}
          </option>
        ))}
      </select>
    </label>
  );
}
