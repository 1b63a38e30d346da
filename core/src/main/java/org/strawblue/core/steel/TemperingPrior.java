package org.strawblue.core.steel;

/** What a tempering law expects of a steel before anything of this very bar has been measured. */
interface TemperingPrior {

    HollomonJaffe exchange();

    /** log₁₀ of the time [s] over the law's own hour. */
    double decades(double seconds);

    /** Expected hardness [HRC]; NaN where the law says nothing. */
    double mean(double z);

    /** Expected hardness as quenched [HRC]; NaN where nothing is known of it. */
    double quenched();

    /** Covariance of the error at two tempers [HRC²]. */
    double covariance(double z1, double u1, double z2, double u2);
}
