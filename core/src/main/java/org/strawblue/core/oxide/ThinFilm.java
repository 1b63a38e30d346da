package org.strawblue.core.oxide;

import java.util.List;
import org.hipparchus.complex.Complex;

/**
 * Light on a stack of thin films, by the exact characteristic matrix.
 *
 * <p>[B; C] = Π [[cos φ, −i sin φ/η], [−iη sin φ, cos φ]] · [1; η_sub], φ = 2πN d cos θ/λ; η = N cos θ (s) or N/cos θ (p);
 * R = |(η₀B − C)/(η₀B + C)|². N = n + ik complex index, d thickness [m], λ wavelength [m], θ angle in the layer, from
 * sin θ = sin θ₀/N. Exact for flat, parallel, uniform layers.
 */
public final class ThinFilm {

    private static final Complex MINUS_I = Complex.I.negate();

    private ThinFilm() {}

    /** One layer: complex index, thickness [m]. */
    public record Layer(Complex index, double thickness) {}

    /** Reflectance of unpolarised light in air at an angle [rad] from the normal; layers from the metal outwards. */
    public static double reflectance(double wavelength, Complex substrate, List<Layer> layers, double angle) {
        double s = reflectance(wavelength, substrate, layers, angle, false);
        return angle == 0 ? s : (s + reflectance(wavelength, substrate, layers, angle, true)) / 2;
    }

    private static double reflectance(
            double wavelength, Complex substrate, List<Layer> layers, double angle, boolean p) {
        Complex b = Complex.ONE;
        Complex c = admittance(substrate, angle, p);
        for (Layer layer : layers) {
            Complex cosine = cosine(layer.index(), angle);
            Complex phase = layer.index().multiply(cosine).multiply(2 * Math.PI * layer.thickness() / wavelength);
            Complex eta = admittance(layer.index(), angle, p);
            Complex cos = phase.cos();
            Complex sin = phase.sin().multiply(MINUS_I);
            Complex next = cos.multiply(b).add(sin.divide(eta).multiply(c));
            c = eta.multiply(sin).multiply(b).add(cos.multiply(c));
            b = next;
        }
        Complex air = admittance(Complex.ONE, angle, p).multiply(b);
        double amplitude = air.subtract(c).divide(air.add(c)).norm();
        return amplitude * amplitude;
    }

    private static Complex admittance(Complex index, double angle, boolean p) {
        Complex cosine = cosine(index, angle);
        return p ? index.divide(cosine) : index.multiply(cosine);
    }

    /** cos θ in a medium, from the angle in air. */
    private static Complex cosine(Complex index, double angle) {
        Complex sine = new Complex(Math.sin(angle)).divide(index);
        return Complex.ONE.subtract(sine.multiply(sine)).sqrt();
    }
}
