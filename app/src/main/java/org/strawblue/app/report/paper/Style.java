package org.strawblue.app.report.paper;

/** How a paragraph is set. Sizes [pt]; {@code ink} from 0, white, to 1, black. */
enum Style {
    TITLE(20, 23, true, 1),
    SUMMARY(11, 14.5, false, 1),
    HEADING(10, 14, true, 0.7),
    STAGE(9.5, 12, false, 0.65),
    LEAD(12.5, 15, true, 1),
    BODY(9, 11.8, false, 1),
    STRONG(9, 11.8, true, 1),
    LABEL(9, 11.8, false, 0.65),
    SMALL(8, 10.5, false, 0.7),
    BANNER(15, 19, true, 1),
    NUMBER(20, 22, true, 1);

    private final double size;
    private final double leading;
    private final boolean strong;
    private final double ink;

    Style(double size, double leading, boolean strong, double ink) {
        this.size = size;
        this.leading = leading;
        this.strong = strong;
        this.ink = ink;
    }

    double size() {
        return size;
    }

    double leading() {
        return leading;
    }

    boolean strong() {
        return strong;
    }

    double ink() {
        return ink;
    }
}
