package org.strawblue.core.steel;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;

/**
 * What is known of this very bar draws the expectation towards it: conditional mean and variance of a normal process,
 * shift = kᵀ K⁻¹ (measured − expected), variance k(x,x) − kᵀ K⁻¹ k. Departure of the hardness as
 * quenched from that expected counts as a test piece tempered very lightly.
 */
@SuppressWarnings("ArrayRecordComponent") // never handed out
final class TestPieces {

    private final TemperingPrior prior;
    private final double[] z;
    private final double[] u;
    private final double[] weights;
    private final double[][] inverse;

    private record Piece(double z, double u, double departure, double variance) {}

    private TestPieces(TemperingPrior prior, List<Piece> pieces) {
        this.prior = prior;
        z = pieces.stream().mapToDouble(Piece::z).toArray();
        u = pieces.stream().mapToDouble(Piece::u).toArray();
        inverse = inverse(prior, pieces);
        double[] departures = pieces.stream().mapToDouble(Piece::departure).toArray();
        weights = new double[z.length];
        for (int i = 0; i < z.length; i++) {
            weights[i] = dot(inverse[i], departures);
        }
    }

    /** Test pieces of which the law says nothing are left out. */
    static TestPieces of(TemperingPrior prior, List<Coupon> coupons, OptionalDouble asQuenched) {
        List<Piece> pieces = new ArrayList<>();
        for (Coupon coupon : coupons) {
            double z = TemperingFigures.reduced(prior.exchange()
                    .parameter(coupon.temper().kelvin(), coupon.temper().seconds()));
            double sd = coupon.sd().orElse(Math.sqrt(HeatSpread.FITTED.reading(z, coupon.hrc())));
            pieces.add(new Piece(z, prior.decades(coupon.temper().seconds()), coupon.hrc() - prior.mean(z), sd * sd));
        }
        asQuenched.ifPresent(hrc -> pieces.add(new Piece(
                HeatSpread.QUENCHED_Z, 0, hrc - prior.quenched(), HeatSpread.QUENCHED_SD * HeatSpread.QUENCHED_SD)));
        pieces.removeIf(p -> Double.isNaN(p.departure()));
        return new TestPieces(prior, pieces);
    }

    boolean none() {
        return z.length == 0;
    }

    /** What is added to the expected hardness [HRC]. */
    double shift(double[] with) {
        return dot(with, weights);
    }

    /** What is taken from its variance [HRC²]. */
    double known(double[] with) {
        double sum = 0;
        for (int i = 0; i < with.length; i++) {
            sum += with[i] * dot(inverse[i], with);
        }
        return sum;
    }

    /** Covariance [HRC²] of each test piece with a temper. */
    double[] with(double z0, double u0) {
        double[] k = new double[z.length];
        for (int i = 0; i < k.length; i++) {
            k[i] = prior.covariance(z0, u0, z[i], u[i]);
        }
        return k;
    }

    private static double[][] inverse(TemperingPrior prior, List<Piece> pieces) {
        int n = pieces.size();
        if (n == 0) {
            return new double[0][];
        }
        double[][] k = new double[n][n];
        for (int i = 0; i < n; i++) {
            Piece a = pieces.get(i);
            for (int j = 0; j < n; j++) {
                Piece b = pieces.get(j);
                k[i][j] = prior.covariance(a.z(), a.u(), b.z(), b.u()) + (i == j ? a.variance() : 0);
            }
        }
        return new CholeskyDecomposition(MatrixUtils.createRealMatrix(k))
                .getSolver()
                .getInverse()
                .getData();
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
