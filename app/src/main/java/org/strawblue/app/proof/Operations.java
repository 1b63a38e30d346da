package org.strawblue.app.proof;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Every operation a case may name. */
public final class Operations {

    private Operations() {}

    /** The topics, one line each. */
    private static List<Map<String, Operation>> topics() {
        List<Map<String, Operation>> topics = new ArrayList<>();
        topics.add(QuantityOperations.all());
        topics.add(ColourOperations.all());
        topics.add(PyrometryOperations.all());
        topics.add(SpringOperations.all());
        topics.add(SpringFamilyOperations.all());
        topics.add(FitOperations.all());
        topics.add(ChainOperations.all());
        topics.add(AssemblyOperations.all());
        topics.add(HardeningOperations.all());
        topics.add(HeatOperations.all());
        topics.add(TemperingOperations.all());
        topics.add(EvidenceOperations.all());
        return topics;
    }

    /** @throws IllegalStateException where two topics give the same name */
    public static Map<String, Operation> all() {
        Map<String, Operation> all = new TreeMap<>();
        for (Map<String, Operation> topic : topics()) {
            topic.forEach((name, operation) -> {
                if (all.put(name, operation) != null) {
                    throw new IllegalStateException("operation twice: " + name);
                }
            });
        }
        return Collections.unmodifiableMap(all);
    }
}
