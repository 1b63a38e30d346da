package org.strawblue.app.service;

/** Told what long work is at. */
@FunctionalInterface
public interface Progress {

    /** For work nobody waits for. */
    Progress NONE = what -> {};

    /** @param what is being done now: "the section" */
    void at(String what);
}
