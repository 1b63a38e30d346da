package org.strawblue.core.heat;

import java.util.Optional;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.steel.CriticalPoints;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.Quenchant;
import org.strawblue.core.steel.Quenched;

/**
 * How to harden one part.
 *
 * @param preheat first stop on the way up [K], where the steel wants one
 * @param secondPreheat second stop [K]
 * @param austenitise aim, and the window to stay within [K]
 * @param heatThrough from cold until the part itself is at heat [s]
 * @param soak at heat after that [s]
 * @param magnet where a magnet lets go on the way up [K]
 * @param martensiteStart where hardening begins in the bath [K]
 * @param toBath time allowed between fire and bath [s]; absent where air itself is the quench
 * @param quenched what comes out
 */
public record HardeningPlan(
        Grade grade,
        PartShape shape,
        Quenchant quench,
        HeatSource source,
        Optional<Estimate> preheat,
        Optional<Estimate> secondPreheat,
        Estimate austenitise,
        Estimate heatThrough,
        Estimate soak,
        CriticalPoints critical,
        Estimate magnet,
        Estimate martensiteStart,
        Optional<Estimate> toBath,
        Quenched quenched) {}
