package org.strawblue.app.input;

import java.util.Map;
import java.util.Optional;
import org.strawblue.core.fit.Limits;
import org.strawblue.core.part.Feature;
import org.strawblue.core.quantity.Band;

/** Reads one size of a part that must be right when all is done. */
final class FeatureReading {

    private static final Map<String, Feature.Kind> KINDS = Map.of(
            "outside diameter", Feature.Kind.OUTSIDE,
            "bore", Feature.Kind.BORE,
            "length", Feature.Kind.LENGTH,
            "thickness", Feature.Kind.FLAT);

    private final Section section;

    FeatureReading(Section section) {
        this.section = section;
    }

    Optional<Feature> feature() {
        Optional<String> word = section.word("kind");
        Optional<Feature.Kind> kind = word.flatMap(k -> Optional.ofNullable(KINDS.get(k)));
        Optional<Size> size = section.size("size");
        String name = section.text("name").or(() -> word).orElse("size");
        if (kind.isEmpty() || size.isEmpty() || !matches(kind.get(), size.get())) {
            return Optional.empty();
        }
        return limits(size.get())
                .map(l -> new Feature(name, kind.get(), size.get().nominal(), l));
    }

    /** The limits written out, or those of the fit; absent where the fit has none in the tables. */
    private Optional<Optional<Band>> limits(Size size) {
        if (size.fit().isEmpty()) {
            return Optional.of(size.limits());
        }
        String fit = size.fit().get();
        return section.scalar("size")
                .flatMap(s -> Named.find(
                        s, x -> Limits.of(size.nominal(), fit), "a size and fit such as 6 mm h6", section.desk()))
                .map(Optional::of);
    }

    /** Small letters are for shafts, capitals for holes. */
    private boolean matches(Feature.Kind kind, Size size) {
        boolean capital =
                size.fit().map(f -> Character.isUpperCase(f.charAt(0))).orElse(kind == Feature.Kind.BORE);
        boolean wrong = kind == Feature.Kind.BORE && !capital
                || kind == Feature.Kind.OUTSIDE && capital && size.fit().isPresent();
        if (wrong) {
            String fit = size.fit().orElse("");
            section.desk()
                    .problem(
                            section.place("size"),
                            fit,
                            kind == Feature.Kind.BORE
                                    ? "the fit of a hole, in capitals: H7"
                                    : "the fit of a shaft, in small letters: h6",
                            "Check the fit, or whether this is the hole or what goes into it.");
        }
        return !wrong;
    }
}
