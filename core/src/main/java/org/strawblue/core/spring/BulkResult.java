package org.strawblue.core.spring;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** What a bulk search found of each spring, by its row. */
public final class BulkResult {

    private static final byte NONE = -1;
    private static final byte RULED_OUT = -2;
    private static final byte AS_IT_IS = -1;

    private final byte[] broken;
    private final float[] probability;
    private final float[] removed;
    private final byte[] newEnd;
    private final boolean[] atFirst;

    private BulkResult(int n) {
        broken = new byte[n];
        probability = new float[n];
        removed = new float[n];
        newEnd = new byte[n];
        atFirst = new boolean[n];
        Arrays.fill(newEnd, AS_IT_IS);
    }

    static BulkResult ofSize(int n) {
        return new BulkResult(n);
    }

    void ruleOut(int i) {
        broken[i] = RULED_OUT;
    }

    void broken(int i, @Nullable Limit limit) {
        broken[i] = limit == null ? NONE : (byte) limit.ordinal();
    }

    void works(int i, Optional<Cut> cut, double chance) {
        // the least chance told apart from none, so that a spring that works is never lost
        probability[i] = Math.max(Float.MIN_NORMAL, (float) chance);
        if (cut.isPresent()) {
            removed[i] = (float) cut.get().removed();
            newEnd[i] = (byte) cut.get().newEnd().ordinal();
            atFirst[i] = cut.get().atFirst();
        }
    }

    public int size() {
        return broken.length;
    }

    /** Whether it keeps every limit, as it is or cut, each measurement taken as exact. */
    public boolean works(int i) {
        return probability[i] > 0;
    }

    /** Chance that it works: of the 512 likeliest to one in a hundred, of the rest to about four [1]. */
    public double probability(int i) {
        return probability[i];
    }

    /** Coils to take off, 0 where it serves as it is. */
    public double removed(int i) {
        return removed[i];
    }

    /** How to cut it; absent where it serves as it is or not at all. */
    public Optional<Cut> cut(int i) {
        return newEnd[i] < 0
                ? Optional.empty()
                : Optional.of(new Cut(removed[i], atFirst[i], EndType.values()[newEnd[i]]));
    }

    /** What it breaks as it is; absent where it keeps all limits, or is ruled out by heat, figures or unknown strength. */
    public Optional<Limit> broken(int i) {
        return broken[i] < 0 ? Optional.empty() : Optional.of(Limit.values()[broken[i]]);
    }

    /** Whether heat, figures that disagree or unknown strength rule it out before any limit is asked. */
    public boolean ruledOut(int row) {
        return broken[row] == RULED_OUT;
    }

    public int working() {
        int count = 0;
        for (float p : probability) {
            count += p > 0 ? 1 : 0;
        }
        return count;
    }

    /** The likeliest rows, at most so many, the likeliest first; of equal chances the lower row first. */
    public int[] best(int most) {
        int[] rows = IntStream.range(0, size()).filter(this::works).toArray();
        long[] keys = new long[rows.length];
        for (int k = 0; k < rows.length; k++) {
            keys[k] = ((long) (Integer.MAX_VALUE - Float.floatToIntBits(probability[rows[k]])) << 32) | rows[k];
        }
        Arrays.sort(keys);
        return Arrays.stream(keys).limit(most).mapToInt(k -> (int) k).toArray();
    }

    /** How many springs break which limit first, in the order of {@link Limit}; springs that work when cut are not counted. */
    public int[] failuresByLimit() {
        int[] count = new int[Limit.values().length];
        for (int i = 0; i < size(); i++) {
            if (broken[i] >= 0 && !works(i)) {
                count[broken[i]]++;
            }
        }
        return count;
    }
}
