package org.strawblue.core.oxide;

import java.util.List;

/**
 * Light on a stack of thin films, by the exact characteristic matrix.
 *
 * <p>[B; C] = Π [[cos φ, −i sin φ/η], [−iη sin φ, cos φ]] · [1; η_sub], φ = 2πN d cos θ/λ; η = N cos θ (s) or N/cos θ (p);
 * R = |(η₀B − C)/(η₀B + C)|². N = n + ik complex index, d thickness [m], λ wavelength [m], θ angle in the layer, from
 * sin θ = sin θ₀/N. Exact for flat, parallel, uniform layers.
 */
public final class ThinFilm {

    private ThinFilm() {}

    /** One layer: complex index n + ik, thickness [m]. */
    public record Layer(Index index, double thickness) {}

    /** Reflectance of unpolarised light in air at an angle [rad] from the normal; layers from the metal outwards. */
    public static double reflectance(double wavelength, Index substrate, List<Layer> layers, double angle) {
        double s = reflectance(wavelength, substrate, layers, angle, false);
        return angle == 0 ? s : (s + reflectance(wavelength, substrate, layers, angle, true)) / 2;
    }

    private static double reflectance(double wavelength, Index substrate, List<Layer> layers, double angle, boolean p) {
        Phasor b = Phasor.ONE;
        Phasor c = admittance(substrate.phasor(), angle, p);
        for (Layer layer : layers) {
            Phasor index = layer.index().phasor();
            Phasor phase = index.times(cosine(index, angle)).times(2 * Math.PI * layer.thickness() / wavelength);
            Phasor forth = phase.wave();
            Phasor back = Phasor.ONE.over(forth);
            Phasor cos = forth.plus(back).times(0.5);
            Phasor minusISin = back.minus(forth).times(0.5);
            Phasor eta = admittance(index, angle, p);
            Phasor next = cos.times(b).plus(minusISin.over(eta).times(c));
            c = eta.times(minusISin).times(b).plus(cos.times(c));
            b = next;
        }
        Phasor air = admittance(Phasor.ONE, angle, p).times(b);
        return air.minus(c).over(air.plus(c)).square();
    }

    private static Phasor admittance(Phasor index, double angle, boolean p) {
        Phasor cosine = cosine(index, angle);
        return p ? index.over(cosine) : index.times(cosine);
    }

    /** cos θ in a medium, from the angle in air. */
    private static Phasor cosine(Phasor index, double angle) {
        if (angle == 0) {
            return Phasor.ONE;
        }
        Phasor sine = new Phasor(Math.sin(angle), 0).over(index);
        return Phasor.ONE.minus(sine.times(sine)).root();
    }
}
