package org.strawblue.core.spring;

/** Whether a spring lasts for ever under a force that comes and goes. */
public interface FatigueLaw {

    /**
     * By how much both stresses might grow in step before the wire tires [1].
     *
     * @param amplitude τ_a of the corrected shear stress [Pa]
     * @param mean τ_m [Pa]
     * @param strength least tensile strength R_m [Pa]
     */
    double safety(double amplitude, double mean, double strength);
}
