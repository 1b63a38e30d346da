package org.strawblue.core.oxide;

import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** The {@link Index} of a material by wavelength [m]. */
@FunctionalInterface
public interface OpticalConstants {

    Index index(double wavelength);

    /** Iron, by Johnson and Christy; 342 to 821 nm. */
    static OpticalConstants iron() {
        return table("iron.csv");
    }

    /** Hematite without a preferred direction: ε = (2ε_o + ε_e)/3, N = √ε, by Querry; 370 to 830 nm. */
    static OpticalConstants hematite() {
        OpticalConstants ordinary = table("hematite_ordinary.csv");
        OpticalConstants extraordinary = table("hematite_extraordinary.csv");
        return wavelength -> {
            Phasor o = ordinary.index(wavelength).permittivity();
            Phasor e = extraordinary.index(wavelength).permittivity();
            return Index.ofPermittivity(o.times(2).plus(e).times(1.0 / 3));
        };
    }

    /** Magnetite as this program takes it: one index over the visible; see {@code film.csv}. */
    static OpticalConstants magnetite() {
        Index index = new Index(Film.number("magnetite_n"), Film.number("magnetite_k"));
        return wavelength -> index;
    }

    /** Magnetite by Querry, whose k is too low for ore microscopy; 370 to 830 nm. */
    static OpticalConstants magnetiteQuerry() {
        return table("magnetite_querry.csv");
    }

    private static OpticalConstants table(String file) {
        Row[] rows = Table.of(OpticalConstants.class, file).rows().toArray(Row[]::new);
        double[] nm = new double[rows.length];
        double[] n = new double[rows.length];
        double[] k = new double[rows.length];
        for (int i = 0; i < rows.length; i++) {
            nm[i] = rows[i].number("wavelength_nm");
            n[i] = rows[i].number("n");
            k[i] = rows[i].number("k");
        }
        PolynomialSplineFunction real = new LinearInterpolator().interpolate(nm, n);
        PolynomialSplineFunction imaginary = new LinearInterpolator().interpolate(nm, k);
        return wavelength -> new Index(real.value(wavelength * 1e9), imaginary.value(wavelength * 1e9));
    }
}
