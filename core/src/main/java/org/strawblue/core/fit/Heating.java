package org.strawblue.core.fit;

/**
 * How the part is heated to harden it, as far as its skin is concerned.
 *
 * @param kelvin hardening temperature [K]
 * @param seconds at that temperature [s]
 * @param shielded from air: by foil, paste, packing or gas
 */
public record Heating(double kelvin, double seconds, boolean shielded) {}
