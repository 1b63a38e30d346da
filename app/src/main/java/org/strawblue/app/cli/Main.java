package org.strawblue.app.cli;

/** The command line. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.out.println("strawblue");
    }
}
