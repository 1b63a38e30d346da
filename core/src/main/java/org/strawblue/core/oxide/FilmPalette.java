package org.strawblue.core.oxide;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.interpolation.SplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.strawblue.core.colour.Appearance;
import org.strawblue.core.colour.Illuminant;
import org.strawblue.core.colour.Lab;
import org.strawblue.core.colour.Light;
import org.strawblue.core.colour.StandardObserver;
import org.strawblue.core.colour.Tristimulus;

/**
 * Thickness to colour in one light.
 *
 * <p>X, Y, Z of a film of one thickness are worked out exactly every few nanometres and joined by cubic splines (error in
 * Y below 10⁻⁴ of white); a real film's are their mean over the spread of its thickness, a cut-off Gaussian of relative
 * standard deviation s(x) = base + slope·max(x − from, 0).
 */
public final class FilmPalette {

    private static final double LIMIT = Film.length("thickness_limit");
    private static final double BASE = Film.number("spread_base");
    private static final double SLOPE = Film.ALL.inUnit("spread_slope", "1/m");
    private static final double FROM = Film.length("spread_from");

    private final Appearance appearance;
    private final PolynomialSplineFunction x;
    private final PolynomialSplineFunction y;
    private final PolynomialSplineFunction z;

    public FilmPalette(TemperFilm film, Light light) {
        this(new Spectra(film), light);
    }

    FilmPalette(Spectra spectra, Light light) {
        double[] power = Illuminant.of(light).spectrum();
        double white = StandardObserver.weigh(power).y();
        Tristimulus[] colours = Arrays.stream(spectra.reflectance)
                .map(r -> seen(r, power, white))
                .toArray(Tristimulus[]::new);
        this.appearance = new Appearance(light);
        this.x = spline(spectra.grid, colours, Tristimulus::x);
        this.y = spline(spectra.grid, colours, Tristimulus::y);
        this.z = spline(spectra.grid, colours, Tristimulus::z);
    }

    /** The thickest film whose colour is told [m]; a thicker one looks much the same grey. */
    public static double limit() {
        return LIMIT;
    }

    /** The colour of a film of mean thickness [m]; beyond {@link #limit()} that of the limit. */
    public FilmColour colour(double thickness) {
        Tristimulus seen = spread(Math.min(thickness, LIMIT));
        Lab lab = appearance.lab(seen);
        return new FilmColour(NameRules.name(lab, thickness), thickness, lab, appearance.hex(seen));
    }

    /** X, Y, Z of an ideally even film, without spread [m]. */
    Tristimulus even(double thickness) {
        return new Tristimulus(x.value(thickness), y.value(thickness), z.value(thickness));
    }

    private Tristimulus spread(double thickness) {
        double sd = thickness * (BASE + SLOPE * Math.max(thickness - FROM, 0));
        double sumX = 0;
        double sumY = 0;
        double sumZ = 0;
        for (int i = 0; i < Nodes.AT.length; i++) {
            double t = Math.max(thickness + sd * Nodes.AT[i], 0);
            sumX += Nodes.WEIGHT[i] * x.value(t);
            sumY += Nodes.WEIGHT[i] * y.value(t);
            sumZ += Nodes.WEIGHT[i] * z.value(t);
        }
        return new Tristimulus(sumX, sumY, sumZ);
    }

    private static Tristimulus seen(double[] reflectance, double[] power, double white) {
        double[] spectrum = new double[power.length];
        Arrays.setAll(spectrum, i -> reflectance[i] * power[i]);
        return StandardObserver.weigh(spectrum).times(1 / white);
    }

    private static PolynomialSplineFunction spline(
            double[] grid, Tristimulus[] colours, ToDoubleFunction<Tristimulus> part) {
        return new SplineInterpolator()
                .interpolate(grid, Arrays.stream(colours).mapToDouble(part).toArray());
    }

    /** Reflectance over wavelength at evenly spaced thicknesses: the same for every light. */
    static final class Spectra {
        final double[] grid = grid();
        final double[][] reflectance;

        Spectra(TemperFilm film) {
            this.reflectance = film.spectra(grid);
        }

        private static double[] grid() {
            double step = Film.length("grid_step");
            double most = LIMIT * (1 + Film.number("spread_reach") * (BASE + SLOPE * (LIMIT - FROM)));
            // two steps below nothing, where the optics are as smooth as above, keep the spline true at bare steel
            double[] grid = new double[4 + (int) (most / step)];
            Arrays.setAll(grid, i -> (i - 2) * step);
            return grid;
        }
    }

    /** Places [standard deviations] and weights of the mean over the spread. */
    private static final class Nodes {
        static final double[] AT = new double[(int) Film.number("spread_nodes")];
        static final double[] WEIGHT = new double[AT.length];

        static {
            double reach = Film.number("spread_reach");
            Arrays.setAll(AT, i -> reach * (2.0 * i / (AT.length - 1) - 1));
            Arrays.setAll(WEIGHT, i -> Math.exp(-AT[i] * AT[i] / 2));
            double sum = Arrays.stream(WEIGHT).sum();
            Arrays.setAll(WEIGHT, i -> WEIGHT[i] / sum);
        }
    }
}
