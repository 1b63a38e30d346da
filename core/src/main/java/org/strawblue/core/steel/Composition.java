package org.strawblue.core.steel;

import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;

/** What a steel is made of, in mass percent; the rest is iron. An element not named is absent. */
public record Composition(
        double c, double mn, double si, double cr, double ni, double mo, double v, double w, double al, double cu) {

    private static final double WHOLE_PERCENT = 100;

    public Composition {
        double sum = c + mn + si + cr + ni + mo + v + w + al + cu;
        double least = Math.min(
                Math.min(Math.min(c, mn), Math.min(si, cr)),
                Math.min(Math.min(Math.min(ni, mo), Math.min(v, w)), Math.min(al, cu)));
        if (!(least >= 0 && sum <= WHOLE_PERCENT)) {
            throw new IllegalArgumentException("not mass percents of a steel: from " + least + ", sum " + sum);
        }
    }

    /** [mass %] by element; what is not in the map is 0. */
    public static Composition of(Map<Element, Double> percent) {
        return new Composition(
                percent.getOrDefault(Element.C, 0.0),
                percent.getOrDefault(Element.MN, 0.0),
                percent.getOrDefault(Element.SI, 0.0),
                percent.getOrDefault(Element.CR, 0.0),
                percent.getOrDefault(Element.NI, 0.0),
                percent.getOrDefault(Element.MO, 0.0),
                percent.getOrDefault(Element.V, 0.0),
                percent.getOrDefault(Element.W, 0.0),
                percent.getOrDefault(Element.AL, 0.0),
                percent.getOrDefault(Element.CU, 0.0));
    }

    /** Plain carbon steel of this carbon [mass %], to build on with {@link #with}. */
    public static Composition carbon(double percent) {
        return of(Map.of(Element.C, percent));
    }

    /** This composition with one element changed to {@code percent} [mass %]. */
    public Composition with(Element element, double percent) {
        Map<Element, Double> all = new EnumMap<>(map());
        all.put(element, percent);
        return of(all);
    }

    /** [mass %] */
    public double of(Element element) {
        return switch (element) {
            case C -> c;
            case MN -> mn;
            case SI -> si;
            case CR -> cr;
            case NI -> ni;
            case MO -> mo;
            case V -> v;
            case W -> w;
            case AL -> al;
            case CU -> cu;
        };
    }

    /** [mass %] of every element, in the order of {@link Element}. */
    public Map<Element, Double> map() {
        Map<Element, Double> all = new TreeMap<>();
        for (Element element : Element.values()) {
            all.put(element, of(element));
        }
        return all;
    }
}
