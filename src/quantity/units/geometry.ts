// Units of length, area, volume and angle. SI Brochure, 9th ed.; NIST SP 811 (2008), B.6 and B.8.
import { type Unit, unit } from "../quantity.ts";

/** One meter. Exact: the SI base unit. Source: SI Brochure, 9th ed. */
export const m: Unit<"length"> = /* @__PURE__ */ unit("length", "m", 1);

/** One millimeter. Source: SI Brochure, 9th ed. */
export const mm: Unit<"length"> = /* @__PURE__ */ unit("length", "mm", 1e-3);

/** One centimeter. Source: SI Brochure, 9th ed. */
export const cm: Unit<"length"> = /* @__PURE__ */ unit("length", "cm", 1e-2);

/** One inch, exactly 25.4 mm. Source: NIST SP 811 (2008), B.6 (international yard and pound agreement of 1959). */
export const inch: Unit<"length"> = /* @__PURE__ */ unit("length", "in", 0.0254);

/** One foot, exactly 0.3048 m. Source: NIST SP 811 (2008), B.6 (international yard and pound agreement of 1959). */
export const ft: Unit<"length"> = /* @__PURE__ */ unit("length", "ft", 0.3048);

/** One square meter. Source: SI Brochure, 9th ed. */
export const m2: Unit<"area"> = /* @__PURE__ */ unit("area", "m²", 1);

/** One square millimeter. Source: SI Brochure, 9th ed. */
export const mm2: Unit<"area"> = /* @__PURE__ */ unit("area", "mm²", 1e-6);

/** One square foot, exactly (0.3048 m)². Source: NIST SP 811 (2008), B.6 (international yard and pound agreement of 1959). */
export const sqft: Unit<"area"> = /* @__PURE__ */ unit("area", "ft²", [0.3048, 0.3048]);

/** One square inch, exactly (0.0254 m)². Source: NIST SP 811 (2008), B.6 (international yard and pound agreement of 1959). */
export const sqin: Unit<"area"> = /* @__PURE__ */ unit("area", "in²", [0.0254, 0.0254]);

/** One cubic meter. Source: SI Brochure, 9th ed. */
export const m3: Unit<"volume"> = /* @__PURE__ */ unit("volume", "m³", 1);

/** One liter, exactly 1 dm³. Source: SI Brochure, 9th ed. */
export const liter: Unit<"volume"> = /* @__PURE__ */ unit("volume", "L", 1e-3);

/** One milliliter, exactly 1 cm³. Source: SI Brochure, 9th ed. */
export const mL: Unit<"volume"> = /* @__PURE__ */ unit("volume", "mL", 1e-6);

/** One cubic foot, exactly (0.3048 m)³. Source: NIST SP 811 (2008), B.6 (international yard and pound agreement of 1959). */
export const cuft: Unit<"volume"> = /* @__PURE__ */ unit("volume", "ft³", [0.3048, 0.3048, 0.3048]);

/** One cubic inch, exactly (0.0254 m)³. Source: NIST SP 811 (2008), B.6 (international yard and pound agreement of 1959). */
export const cuin: Unit<"volume"> = /* @__PURE__ */ unit("volume", "in³", [0.0254, 0.0254, 0.0254]);

/** One U.S. gallon, exactly 231 in³. Source: NIST SP 811 (2008), B.8. */
export const gallon: Unit<"volume"> = /* @__PURE__ */ unit(
  "volume",
  "gal",
  [231, 0.0254, 0.0254, 0.0254],
);

/** One radian. Exact: the SI unit. Source: SI Brochure, 9th ed. */
export const radian: Unit<"angle"> = /* @__PURE__ */ unit("angle", "rad", 1);

/** One degree of arc, π/180 rad. Source: SI Brochure, 9th ed. */
export const degreeAngle: Unit<"angle"> = /* @__PURE__ */ unit("angle", "°", Math.PI, 180);
