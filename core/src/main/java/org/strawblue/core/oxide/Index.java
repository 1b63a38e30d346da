package org.strawblue.core.oxide;

/** A complex refractive index N = n + ik, k ≥ 0 where light is absorbed [1]. */
public record Index(double n, double k) {

    /** A clear material. */
    public static Index clear(double n) {
        return new Index(n, 0);
    }

    /** ε = N² */
    Phasor permittivity() {
        return phasor().times(phasor());
    }

    static Index ofPermittivity(Phasor permittivity) {
        Phasor root = permittivity.root();
        return new Index(root.re(), root.im());
    }

    Phasor phasor() {
        return new Phasor(n, k);
    }
}
