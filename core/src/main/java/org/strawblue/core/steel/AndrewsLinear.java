package org.strawblue.core.steel;

/**
 * Ms = 539 − 423 C − 30.4 Mn − 17.7 Ni − 12.1 Cr − 7.5 Mo [°C], contents [mass %].
 *
 * <p>Range: C below 0.6, Mn below 4.9, Cr and Ni below 5, Mo below 5.4 mass %. Root mean square error 25 K there; with the
 * total carbon of a hypereutectoid steel it is wrong by 140 K. Source: Andrews 1965.
 */
public final class AndrewsLinear extends LinearMartensiteStart {
    public AndrewsLinear() {
        super("andrews-ms", "Andrews’ linear formula");
    }
}
