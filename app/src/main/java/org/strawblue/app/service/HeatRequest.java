package org.strawblue.app.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.strawblue.core.colour.Light;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.heat.course.Spell;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.steel.Steel;

/**
 * A part on its way through a heat.
 *
 * @param start [K]
 * @param before what goes before the spell whose time is in question
 * @param main that spell; its time is the longest looked at where something is wanted
 * @param after what follows when it is taken off
 * @param steel whose hardness and colour are to be told; absent for temperatures alone
 * @param chromium of the steel [mass %]
 * @param findings what there is to say of how it was read
 */
public record HeatRequest(
        PartShape shape,
        double start,
        List<Spell> before,
        Spell main,
        List<Spell> after,
        Optional<Steel> steel,
        Light light,
        double chromium,
        Optional<HeatTarget> target,
        List<Finding> findings) {

    public HeatRequest {
        before = List.copyOf(before);
        after = List.copyOf(after);
        findings = List.copyOf(findings);
    }

    /** Taken off so long [s] after the main spell began. */
    Course takenOffAfter(double seconds) {
        List<Spell> spells = new ArrayList<>(before);
        spells.add(main(seconds));
        spells.addAll(after);
        return new Course(shape, start, spells);
    }

    /** The same, left on and not taken off. */
    Course leftOn(double seconds) {
        List<Spell> spells = new ArrayList<>(before);
        spells.add(main(seconds));
        return new Course(shape, start, spells);
    }

    /** The same, never taken off. */
    HeatRequest notTakenOff() {
        return new HeatRequest(shape, start, before, main, List.of(), steel, light, chromium, target, findings);
    }

    /** A log that is not followed to its end is cut. */
    private Spell main(double seconds) {
        boolean shorter = main.setting() instanceof Setting.AsLogged log
                && seconds < log.log().duration();
        return new Spell(
                shorter
                        ? new Setting.AsLogged(
                                ((Setting.AsLogged) main.setting()).log().until(seconds))
                        : main.setting(),
                seconds);
    }

    /** When the main spell begins [s]. */
    double mainFrom() {
        return before.stream().mapToDouble(Spell::seconds).sum();
    }

    /** Whether it is hardened on the way, by a bath or dip: colour and temper begin after that. */
    boolean hardened() {
        return before.stream().anyMatch(s -> bath(s.setting()));
    }

    /** From when on colour and hardness are read [s]. */
    double readFrom() {
        return hardened() ? mainFrom() : 0;
    }

    /** Whether one stretch of it has another heat than the rest. */
    boolean partly() {
        return Stream.of(before, List.of(main), after)
                .flatMap(List::stream)
                .anyMatch(s -> s.setting() instanceof Setting.Partly);
    }

    /** Whether the part's own temperature was logged. */
    boolean logged() {
        return main.setting() instanceof Setting.AsLogged;
    }

    private static boolean bath(Setting setting) {
        return setting instanceof Setting.InBath
                || setting instanceof Setting.Partly partly && partly.there() instanceof Setting.InBath;
    }
}
