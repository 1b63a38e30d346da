package org.strawblue.core.spring;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The search of {@link SpringSearch} over columns: every spring as it is and with every allowed cut, by the same rules, on
 * all processors. It says which springs may work, how, and how likely; the words come from {@link SpringSearch}.
 */
public final class BulkSearch {

    private static final int CHUNK = 2048;
    private static final int REFINED = 512;
    private static final EndType[] ENDS = EndType.values();
    private static final Ends UNNOTED = Ends.both(EndType.CLOSED);

    private final Pocket pocket;
    private final SpringColumns springs;
    private final BulkResult result;
    private final Kind[] kinds;
    private final MeasurementErrors noted = MeasurementErrors.usual();
    private final MeasurementErrors unnoted = noted.endsUnknown();
    private final Ends[][] pairs;

    /** One wire in this pocket: null where the pocket is too hot for it. */
    private record Kind(SpringMaterial material, AllowableCurve curve, boolean tooHot) {}

    private BulkSearch(Pocket pocket, SpringColumns springs) {
        this.pocket = pocket;
        this.springs = springs;
        result = BulkResult.ofSize(springs.size());
        kinds = kinds(pocket);
        pairs = pairs();
    }

    /** Every spring with usual measurement errors. */
    public static BulkResult search(Pocket pocket, SpringColumns springs) {
        BulkSearch search = new BulkSearch(pocket, springs);
        int chunks = (springs.size() + CHUNK - 1) / CHUNK;
        IntStream.range(0, chunks).parallel().forEach(search::chunk);
        int[] likeliest = search.result.best(REFINED);
        IntStream.of(likeliest).parallel().forEach(search::refine);
        return search.result;
    }

    /** The chance of one that is likely to be told: by as many points as where reasons are given. */
    private void refine(int i) {
        SpringMaterial material = kinds[springs.material()[i]].material();
        double[] borne = new double[2];
        kinds[springs.material()[i]].curve().at(springs.wire()[i], borne);
        Optional<Cut> cut = result.cut(i);
        Duty duty = Duty.of(pocket, moduli(i, material), borne[0], borne[1]);
        result.works(i, cut, WorkingProbability.fine().of(inputs(i, material), cut, duty));
    }

    private Moduli moduli(int i, SpringMaterial material) {
        Moduli room = material.stiffness(springs.wire()[i]).moduli();
        return pocket.temperature().isPresent() ? room.at(pocket.temperature().getAsDouble()) : room;
    }

    private void chunk(int chunk) {
        double[] borne = new double[2];
        int end = Math.min(springs.size(), (chunk + 1) * CHUNK);
        for (int i = chunk * CHUNK; i < end; i++) {
            one(i, borne);
        }
    }

    private void one(int i, double[] borne) {
        Kind kind = kinds[springs.material()[i]];
        double wire = springs.wire()[i];
        if (kind.tooHot() || !kind.curve().at(wire, borne)) {
            result.ruleOut(i);
            return;
        }
        MeasuredInputs inputs = inputs(i, kind.material());
        Coil coil = inputs.nominal(Optional.empty());
        if (coil.active() <= 0 || coil.pitch() < coil.wire()) {
            result.ruleOut(i);
            return;
        }
        judge(i, inputs, coil, Duty.of(pocket, moduli(i, kind.material()), borne[0], borne[1]));
    }

    private void judge(int i, MeasuredInputs inputs, Coil coil, Duty duty) {
        Limit broken = FirstBroken.of(coil, duty);
        result.broken(i, broken);
        if (broken != null && FirstBroken.beyondCutting(broken, coil, duty)) {
            return;
        }
        Optional<BestWay> best = BestWay.of(inputs, duty, broken == null);
        if (best.isPresent()) {
            Optional<Cut> cut = best.get().cut();
            result.works(i, cut, WorkingProbability.middling().of(inputs, cut, duty));
        }
    }

    private MeasuredInputs inputs(int i, SpringMaterial material) {
        int first = springs.first()[i];
        Ends ends = first < 0 ? UNNOTED : pairs[first][springs.second()[i]];
        return MeasuredInputs.of(
                springs.wire()[i],
                springs.outside()[i],
                springs.free()[i],
                springs.coils()[i],
                first < 0 ? unnoted : noted,
                ends,
                material.stiffness(springs.wire()[i]));
    }

    private static Kind[] kinds(Pocket pocket) {
        Map<SpringMaterial.Key, Kind> kinds = new EnumMap<>(SpringMaterial.Key.class);
        for (SpringMaterial material : SpringMaterial.all()) {
            boolean tooHot = pocket.temperature().orElse(0) > material.hottest();
            kinds.put(material.key(), new Kind(material, AllowableCurve.of(material), tooHot));
        }
        return kinds.values().toArray(Kind[]::new);
    }

    private static Ends[][] pairs() {
        Ends[][] pairs = new Ends[ENDS.length][ENDS.length];
        for (EndType first : ENDS) {
            for (EndType second : ENDS) {
                pairs[first.ordinal()][second.ordinal()] = new Ends(first, second);
            }
        }
        return pairs;
    }
}
