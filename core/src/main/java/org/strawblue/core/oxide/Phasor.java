package org.strawblue.core.oxide;

/**
 * A complex number re + i·im, as far as thin films need it.
 *
 * <p>Plain arithmetic without the safeguards of the library's complex numbers: a palette takes thousands of these before
 * the first colour can be shown, and the safeguards make that ten times as slow.
 */
record Phasor(double re, double im) {

    static final Phasor ONE = new Phasor(1, 0);

    Phasor plus(Phasor z) {
        return new Phasor(re + z.re, im + z.im);
    }

    Phasor minus(Phasor z) {
        return new Phasor(re - z.re, im - z.im);
    }

    Phasor times(Phasor z) {
        return new Phasor(re * z.re - im * z.im, re * z.im + im * z.re);
    }

    Phasor times(double factor) {
        return new Phasor(factor * re, factor * im);
    }

    Phasor over(Phasor z) {
        double square = z.square();
        return new Phasor((re * z.re + im * z.im) / square, (im * z.re - re * z.im) / square);
    }

    /** |z|² */
    double square() {
        return re * re + im * im;
    }

    /** The root with a positive real part. */
    Phasor root() {
        double size = Math.sqrt(square());
        return new Phasor(Math.sqrt((size + re) / 2), Math.copySign(Math.sqrt((size - re) / 2), im));
    }

    /** e^{iz} */
    Phasor wave() {
        double size = Math.exp(-im);
        return new Phasor(size * Math.cos(re), size * Math.sin(re));
    }
}
