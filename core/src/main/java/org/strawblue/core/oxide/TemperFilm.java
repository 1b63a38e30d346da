package org.strawblue.core.oxide;

import java.util.Arrays;
import java.util.List;
import org.strawblue.core.colour.StandardObserver;

/**
 * The film as it lies on the steel: hematite outside on magnetite on iron.
 *
 * @param hematiteShare part of the thickness that is hematite [1]
 */
public record TemperFilm(OpticalConstants steel, OpticalConstants inner, OpticalConstants outer, double hematiteShare) {

    /** The film in use, from {@code film.csv}. */
    public static TemperFilm standard() {
        return new TemperFilm(
                OpticalConstants.iron(),
                OpticalConstants.magnetite(),
                OpticalConstants.hematite(),
                Film.number("hematite_share"));
    }

    /** Reflectance [1] of a film of one thickness [m], straight on. */
    public double reflectance(double wavelength, double thickness) {
        return ThinFilm.reflectance(
                wavelength,
                steel.index(wavelength),
                List.of(
                        new ThinFilm.Layer(inner.index(wavelength), (1 - hematiteShare) * thickness),
                        new ThinFilm.Layer(outer.index(wavelength), hematiteShare * thickness)),
                0);
    }

    /** Reflectance at {@link StandardObserver#wavelengths()} for each thickness [m]. */
    double[][] spectra(double[] thicknesses) {
        double[] wavelengths = StandardObserver.wavelengths();
        TemperFilm sampled = sampled(wavelengths);
        double[][] spectra = new double[thicknesses.length][wavelengths.length];
        for (int x = 0; x < thicknesses.length; x++) {
            for (int w = 0; w < wavelengths.length; w++) {
                spectra[x][w] = sampled.reflectance(wavelengths[w], thicknesses[x]);
            }
        }
        return spectra;
    }

    /** The same film with its indices worked out once for each wavelength. */
    private TemperFilm sampled(double[] wavelengths) {
        return new TemperFilm(
                sampled(steel, wavelengths), sampled(inner, wavelengths), sampled(outer, wavelengths), hematiteShare);
    }

    private static OpticalConstants sampled(OpticalConstants material, double[] wavelengths) {
        Index[] indices = Arrays.stream(wavelengths).mapToObj(material::index).toArray(Index[]::new);
        return wavelength -> indices[Arrays.binarySearch(wavelengths, wavelength)];
    }
}
