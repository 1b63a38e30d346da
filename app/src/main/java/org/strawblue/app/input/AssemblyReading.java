package org.strawblue.app.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.assembly.Lock;
import org.strawblue.core.assembly.Metal;
import org.strawblue.core.assembly.Strength;
import org.strawblue.core.fit.Chain;
import org.strawblue.core.fit.Demand;
import org.strawblue.core.fit.Limits;
import org.strawblue.core.fit.Link;
import org.strawblue.core.fit.Spread;
import org.strawblue.core.heat.SteelProperties;
import org.strawblue.core.job.AssemblyWish;
import org.strawblue.core.job.WorkPiece;
import org.strawblue.core.oxide.ColourName;
import org.strawblue.core.part.Feature;
import org.strawblue.core.part.ScrewThread;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;

/** Reads how the parts of a job go together. */
final class AssemblyReading {

    private final Section assembly;
    private final Desk desk;
    private final List<WorkPiece> parts;

    AssemblyReading(Section assembly, List<WorkPiece> parts) {
        this.assembly = assembly;
        this.desk = assembly.desk();
        this.parts = parts;
    }

    AssemblyWish wish() {
        return new AssemblyWish(
                assembly.groups("slides").stream()
                        .flatMap(s -> slide(s).stream())
                        .toList(),
                assembly.groups("gaps").stream().flatMap(s -> gap(s).stream()).toList(),
                assembly.groups("locks").stream().flatMap(s -> lock(s).stream()).toList(),
                assembly.groups("finishes").stream()
                        .flatMap(s -> finish(s).stream())
                        .toList());
    }

    private Optional<AssemblyWish.Slide> slide(Section section) {
        Optional<Feature> hole = named(section, "hole");
        Optional<Feature> shaft = named(section, "shaft");
        String name = section.text("name")
                .orElse(shaft.map(Feature::name).orElse("pin") + " in "
                        + hole.map(Feature::name).orElse("hole"));
        return hole.flatMap(h -> shaft.map(s -> new AssemblyWish.Slide(name, h, s)));
    }

    /** A size of a part of this job that has limits. */
    private Optional<Feature> named(Section section, String key) {
        Optional<YamlNode.Scalar> text = section.scalar(key);
        return text.flatMap(t -> {
            List<Feature> found = features(t.text());
            if (found.size() != 1) {
                desk.problem(
                        t.place(),
                        t.text(),
                        "the name of one size with limits: " + String.join(", ", names()),
                        found.isEmpty()
                                ? "Use the name that stands under features, and give that size its limits."
                                : "Several are called so: write the part before it, as in  guide bush / bore");
                return Optional.empty();
            }
            return Optional.of(found.get(0));
        });
    }

    private List<Feature> features(String text) {
        List<Feature> found = new ArrayList<>();
        for (WorkPiece part : parts) {
            for (Feature feature : part.features()) {
                boolean called = same(text, feature.name())
                        || same(text, part.name() + " / " + feature.name())
                        || same(text, part.name() + "/" + feature.name());
                if (called && feature.limits().isPresent()) {
                    found.add(feature);
                }
            }
        }
        return found;
    }

    private List<String> names() {
        return parts.stream()
                .flatMap(p -> p.features().stream())
                .filter(f -> f.limits().isPresent())
                .map(Feature::name)
                .toList();
    }

    private static boolean same(String text, String name) {
        return text.strip().equalsIgnoreCase(name.strip());
    }

    private Optional<Demand> gap(Section section) {
        double least = section.si("at least").orElse(Double.NEGATIVE_INFINITY);
        double most = section.si("at most").orElse(Double.POSITIVE_INFINITY);
        if (!(least < most)) {
            desk.problem(
                    section.place("at least"),
                    section.text("at least").orElse(""),
                    "less than at most",
                    "Exchange the two, or check their units.");
            return Optional.empty();
        }
        if (least == Double.NEGATIVE_INFINITY && most == Double.POSITIVE_INFINITY) {
            desk.problem(
                    section.place(), "neither at least nor at most", "at least: 0.1 mm", "Say what the gap has to be.");
            return Optional.empty();
        }
        Optional<String> sizes = section.text("sizes");
        return sizes.flatMap(t -> chain(section, t)).map(c -> new Demand(c, new Band(Dimension.LENGTH, least, most)));
    }

    private Optional<Chain> chain(Section section, String text) {
        List<ChainPieces.Piece> pieces = ChainPieces.of(text);
        List<Link> links = new ArrayList<>();
        for (ChainPieces.Piece piece : pieces) {
            limits(section, piece.text())
                    .ifPresent(b -> links.add(new Link(piece.text(), piece.weight(), new Spread.Within(b))));
        }
        return links.size() == pieces.size()
                ? Optional.of(new Chain(section.text("name").orElse("gap"), links))
                : Optional.empty();
    }

    private Optional<Band> limits(Section section, String piece) {
        List<Feature> called = features(piece);
        if (called.size() == 1) {
            return called.get(0).limits();
        }
        Optional<Size> size = section.size("sizes", piece);
        if (size.isEmpty() || size.get().fit().isEmpty()) {
            return size.map(s -> s.limits().orElse(new Band(Dimension.LENGTH, s.nominal(), s.nominal())));
        }
        String fit = size.get().fit().get();
        double nominal = size.get().nominal();
        return section.scalar("sizes")
                .flatMap(s -> Named.find(s, x -> Limits.of(nominal, fit), "sizes with limits", desk));
    }

    private Optional<AssemblyWish.LockedScrew> lock(Section section) {
        Optional<ScrewThread> thread =
                section.scalar("thread").flatMap(s -> Named.find(s, ScrewThread::find, "a thread", desk));
        Strength strength = section.scalar("strength")
                .flatMap(s -> section.convert(s, Strength::find, "low, medium, high", none -> Optional.empty()))
                .orElse(Strength.all().get(0));
        Optional<Metal> metal = section.scalar("surface")
                .flatMap(s ->
                        section.convert(s, Metal::find, String.join(", ", Metal.names()), none -> Optional.empty()))
                .or(() -> Metal.find("steel"));
        Optional<Double> engaged = section.si("engaged");
        return thread.map(t -> new AssemblyWish.LockedScrew(
                section.text("name").orElse("screw"),
                new Lock(
                        t,
                        engaged.orElse(t.major()),
                        strength,
                        metal.orElseThrow(),
                        SteelProperties.room(),
                        java.util.OptionalDouble.empty())));
    }

    private Optional<AssemblyWish.Finish> finish(Section section) {
        Optional<String> part = section.scalar("part")
                .flatMap(s -> section.convert(
                        s,
                        t -> parts.stream()
                                .map(WorkPiece::name)
                                .filter(n -> same(t, n))
                                .findFirst(),
                        String.join(", ", parts.stream().map(WorkPiece::name).toList()),
                        none -> Optional.empty()));
        Optional<ColourName> colour = section.scalar("colour")
                .flatMap(s ->
                        section.convert(s, ColourName::find, "straw, purple, dark blue ...", none -> Optional.empty()));
        Optional<Double> kelvin = section.si("temperature");
        return part.flatMap(p -> colour.map(c -> new AssemblyWish.Finish(p, c, PartReading.optional(kelvin))));
    }
}
