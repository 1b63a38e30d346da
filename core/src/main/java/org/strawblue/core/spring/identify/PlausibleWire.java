package org.strawblue.core.spring.identify;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.spring.Moduli;
import org.strawblue.core.spring.SpringMaterial;
import org.strawblue.core.spring.SpringMaterial.Key;

/**
 * The wire a spring is taken for when its material is known by odds only: the modulus of all kinds by their odds, the strength
 * of the weakest plausible one, the heat the tenderest of them stands.
 */
final class PlausibleWire {

    private PlausibleWire() {}

    static SpringMaterial of(MaterialOdds odds, double wire) {
        List<SpringMaterial> plausible =
                odds.plausible().stream().map(SpringMaterial::of).toList();
        if (plausible.size() == 1) {
            return plausible.get(0);
        }
        SpringMaterial likeliest = plausible.get(0);
        Band shear = odds.modulus(wire);
        double ratio = likeliest.stiffness(wire).moduli().ratio();
        Moduli moduli = new Moduli(shear.middle() / ratio, shear.middle());
        Basis basis = new Basis("shear modulus by the odds of each wire", "strawblue", Standing.FITTED);
        return new SpringMaterial(
                Key.UNKNOWN,
                "wire that is most likely " + likeliest.name(),
                List.of(),
                likeliest.density(),
                plausible.stream().mapToDouble(SpringMaterial::hottest).min().orElseThrow(),
                List.of(new SpringMaterial.Stiffness(
                        0, Double.POSITIVE_INFINITY, moduli, shear.low(), shear.high(), basis)),
                plausible.stream().flatMap(m -> m.allowables().stream()).toList());
    }

    /** The plausible wire that bears least at this diameter. */
    static Optional<SpringMaterial> weakest(MaterialOdds odds, double wire) {
        return odds.plausible().stream()
                .map(SpringMaterial::of)
                .filter(m -> m.allowable(wire).isPresent())
                .min(java.util.Comparator.comparingDouble(
                        m -> m.allowable(wire).orElseThrow().stress()));
    }
}
