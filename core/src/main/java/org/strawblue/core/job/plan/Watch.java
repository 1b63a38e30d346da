package org.strawblue.core.job.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.job.Item;
import org.strawblue.core.pyrometry.CrayonChoice;
import org.strawblue.core.pyrometry.Crayons;
import org.strawblue.core.pyrometry.InfraredGun;
import org.strawblue.core.pyrometry.InfraredReading;
import org.strawblue.core.pyrometry.Surface;
import org.strawblue.core.pyrometry.TemperatureIndicator;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/** How the temperature of a temper is watched with what the shop has: crayons, an infrared gun. */
final class Watch {

    private static final double ROOM = Practice.room();

    private final StepDraft step;
    private final TemperPlan plan;
    private final List<TemperatureIndicator> shop;
    private final List<Item> items = new ArrayList<>();

    private Watch(StepDraft step, TemperPlan plan, List<TemperatureIndicator> shop) {
        this.step = step;
        this.plan = plan;
        this.shop = shop;
    }

    /** Adds to the step what each instrument will show; returns what to have ready for it. */
    static List<Item> over(StepDraft step, TemperPlan plan, List<TemperatureIndicator> shop) {
        Watch watch = new Watch(step, plan, shop);
        watch.crayons();
        watch.infrared();
        return watch.items;
    }

    private void crayons() {
        Optional<Crayons> owned = first(Crayons.class);
        CrayonChoice.of(plan.heat(), owned.orElseGet(() -> new Crayons(List.of())))
                .value()
                .ifPresent(choice -> {
                    step.reason(
                            "Crayons: the {} one must melt to a slick streak, the {} one must stay dry; then the metal is"
                                    + " between {} and {}.",
                            Quantity.temperature(choice.slick()),
                            Quantity.temperature(choice.dry()),
                            Quantity.temperature(choice.proven().low()),
                            Quantity.temperature(choice.proven().high()));
                    items.add(new Item(
                            Phrase.of(
                                    "Melting crayons {} and {}",
                                    Quantity.temperature(choice.slick()),
                                    Quantity.temperature(choice.dry())),
                            Phrase.of("to prove the temper of the metal itself"),
                            owned.filter(c -> has(c, choice)).isPresent()));
                });
    }

    private static boolean has(Crayons crayons, CrayonChoice choice) {
        return crayons.ratings().contains(choice.slick()) && crayons.ratings().contains(choice.dry());
    }

    private void infrared() {
        first(InfraredGun.class).ifPresent(gun -> {
            reading(gun, Surface.BRIGHT, "Gun reads on bright steel");
            reading(gun, Surface.OXIDISED, "Gun reads on scale");
            reading(gun, Surface.PAINTED, "Gun reads on a painted patch");
            step.reason(
                    "The infrared gun is set to {}: on bright steel it sees mostly the room. Believe it only on a patch of"
                            + " heat-proof matt paint larger than its spot.",
                    Quantity.number(gun.emissivitySetting()));
            items.add(new Item(
                    Phrase.of("Matt heat-proof paint or soot"),
                    Phrase.of("a patch for the infrared gun, away from where the colour is judged"),
                    false));
        });
    }

    private void reading(InfraredGun gun, Surface surface, String label) {
        new InfraredReading(gun, surface, ROOM).at(plan.kelvin()).value().ifPresent(e -> step.figure(label, e));
    }

    private <T extends TemperatureIndicator> Optional<T> first(Class<T> kind) {
        return shop.stream().filter(kind::isInstance).map(kind::cast).findFirst();
    }
}
