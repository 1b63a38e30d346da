package org.strawblue.core.source;

/** An entry of the bibliography. */
public record Source(String key, String title, String address) {}
