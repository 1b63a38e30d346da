package org.strawblue.app.input;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Takes "12 ±0.05 mm - 8 +0/-0.1 mm - head" apart: a plus or minus that stands alone divides, one at a figure does not. */
public final class ChainPieces {

    private static final Pattern SIGN = Pattern.compile("(?:^\\s*|\\s+)([+−–-])\\s+");

    /**
     * One size.
     *
     * @param weight +1 or −1
     */
    public record Piece(String text, double weight) {}

    private ChainPieces() {}

    /** In order; a piece that is blank stands where a size is missing. */
    public static List<Piece> of(String text) {
        List<Piece> pieces = new ArrayList<>();
        Matcher sign = SIGN.matcher(text + " ");
        int from = 0;
        double weight = 1;
        while (sign.find()) {
            String piece =
                    text.substring(from, Math.min(sign.start(), text.length())).strip();
            if (!piece.isEmpty() || from > 0) {
                pieces.add(new Piece(piece, weight));
            }
            weight = sign.group(1).equals("+") ? 1 : -1;
            from = Math.min(sign.end(), text.length());
        }
        pieces.add(new Piece(text.substring(from).strip(), weight));
        return pieces;
    }
}
