package org.strawblue.core.job;

/** The steps of making a hardened part, in the order of work. */
public enum Stage {
    TURN("Turn and leave allowance"),
    HARDEN("Harden"),
    PROVE_HARD("Prove it hardened"),
    TEMPER("Temper"),
    PROVE_TEMPERED("Prove the temper"),
    FINISH("Finish to size"),
    SPRING("Choose the spring"),
    ASSEMBLE("Fit and assemble");

    private final String title;

    Stage(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }
}
