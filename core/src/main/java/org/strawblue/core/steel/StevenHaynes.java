package org.strawblue.core.steel;

/**
 * Ms = 561 − 474 C − 33 Mn − 17 Cr − 17 Ni − 21 Mo [°C], contents [mass %].
 *
 * <p>Range: C 0.1 to 0.55, Mn to 1.7, Si to 0.35, Cr to 3.5, Ni to 5, Mo to 1 mass %. Root mean square error 28 K. Source:
 * Steven and Haynes 1956.
 */
public final class StevenHaynes extends LinearMartensiteStart {
    public StevenHaynes() {
        super("steven-haynes", "Steven and Haynes’ formula");
    }
}
