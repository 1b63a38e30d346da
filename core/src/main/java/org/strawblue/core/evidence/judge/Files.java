package org.strawblue.core.evidence.judge;

/** Files as a measure of hardness. */
public final class Files {

    private Files() {}

    /** Level of a good common file [HRC]. */
    public static double commonLevel() {
        return Looks.hrc("common-file");
    }
}
