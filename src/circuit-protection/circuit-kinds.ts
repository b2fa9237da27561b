// What stands ahead of a circuit, and what does it feed? The two words that decide who protects its wire.
// Follows NFPA 70 (2023), 240.4(G). Does not cover what follows from them: minimum-conductor.ts.

/**
 * `motor-compressor`: Article 440, where the unit's own overload protects the conductors. `other`: heaters,
 * air handlers with heat and the like, whose conductors the device protects.
 *
 * Source: NFPA 70 (2023), 240.4(G).
 */
export type EquipmentKind = "motor-compressor" | "other";

/** Fuse or breaker. */
export type DeviceKind = "breaker" | "fuse";
