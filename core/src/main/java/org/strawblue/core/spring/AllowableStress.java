package org.strawblue.core.spring;

import java.util.List;
import org.strawblue.core.source.Basis;

/**
 * What a wire bears.
 *
 * @param stress corrected shear stress up to which it takes no set [Pa]
 * @param strength least tensile strength [Pa]
 */
public record AllowableStress(double stress, double strength, List<Basis> bases) {}
