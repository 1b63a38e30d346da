package org.strawblue.core.steel;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.source.Basis;

/**
 * A steel of the catalogue, or one made up of a composition alone.
 *
 * @param name key of the catalogue: "O1", "1084"
 * @param title what it is, in words
 * @param equivalents the nearest European designation
 * @param madeFor the mildest quench the steel is made for; empty where it is case-hardened only
 * @param formulas whether the formulas by composition hold for it; if not, only found figures count
 * @param composition nominal content [mass %]
 * @param limits lowest and highest content the standard allows [mass %]
 * @param figures what has been found of it
 * @param fits how it takes each kind of quench
 */
public record Grade(
        String name,
        String title,
        String equivalents,
        Optional<Quenchant.Family> madeFor,
        boolean formulas,
        Composition composition,
        Map<Element, Band> limits,
        Map<Property, Estimate> figures,
        Map<Quenchant.Family, QuenchFit> fits,
        SortedSet<Basis> compositionBases) {

    public Grade {
        limits = Map.copyOf(limits);
        figures = Map.copyOf(figures);
        fits = Map.copyOf(fits);
        compositionBases = java.util.Collections.unmodifiableSortedSet(new TreeSet<>(compositionBases));
    }

    /** A steel known by its composition alone: the formulas must answer for it. */
    public static Grade of(Composition composition, Basis basis) {
        return new Grade(
                "this steel",
                "steel by analysis",
                "",
                Optional.empty(),
                true,
                composition,
                Map.of(),
                Map.of(),
                Map.of(),
                new TreeSet<>(List.of(basis)));
    }

    /** What has been found of one property, with its spread. */
    public Optional<Estimate> found(Property property) {
        return Optional.ofNullable(figures.get(property));
    }

    /** Whether the catalogue knows it, or only its composition is known. */
    public boolean catalogued() {
        return !figures.isEmpty();
    }

    /** What is said of this grade in bases: "Ac1 of O1". */
    public String of(String what) {
        return what + " of " + name;
    }
}
