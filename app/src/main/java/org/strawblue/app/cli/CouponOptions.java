package org.strawblue.app.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What was tried on a steel of no name. */
final class CouponOptions {

    @Option(
            names = "--look",
            paramLabel = "WORD",
            description = "Of unknown steel: black, drawn, ground, stainless, cast.")
    private @Nullable String look;

    @Option(names = "--magnet", paramLabel = "WORD", description = "Of unknown steel, cold: holds, weak, none.")
    private @Nullable String magnet;

    @Option(names = "--file", paramLabel = "WORD", description = "Of unknown steel, as it came: bites, skates.")
    private @Nullable String file;

    @Option(names = "--spark", paramLabel = "WORD", description = "Of unknown steel: plain, some, bushy, red, straw.")
    private @Nullable String spark;

    @Option(names = "--oil", paramLabel = "WORD", description = "A thin coupon quenched in oil: hard, soft.")
    private @Nullable String oil;

    @Option(names = "--thick", paramLabel = "WORD", description = "A thick piece quenched in oil: hard, soft.")
    private @Nullable String thick;

    @Option(
            names = "--water",
            paramLabel = "WORD",
            description = "A thin coupon quenched in water: hard, soft, cracked.")
    private @Nullable String water;

    @Option(names = "--air", paramLabel = "WORD", description = "A thin coupon cooled in air: hard, soft.")
    private @Nullable String air;

    @Option(
            names = "--snap",
            paramLabel = "WORD",
            description = "A quenched coupon snapped: bends, coarse, fine, grey.")
    private @Nullable String snap;

    /** Words by clue, of those that were given. */
    Map<String, String> tried() {
        Map<String, String> tried = new LinkedHashMap<>();
        put(tried, "look", look);
        put(tried, "magnet", magnet);
        put(tried, "file", file);
        put(tried, "spark", spark);
        put(tried, "oil", oil);
        put(tried, "thick", thick);
        put(tried, "water", water);
        put(tried, "air", air);
        put(tried, "snap", snap);
        return tried;
    }

    private static void put(Map<String, String> tried, String clue, @Nullable String word) {
        if (word != null) {
            tried.put(clue, word);
        }
    }
}
