package org.strawblue.core.job;

/**
 * A thing the job file says is not known.
 *
 * @param path where it stands, in the words of the file: "parts / plunger / temper / temperature"
 * @param what the thing, in a few words: "temperature"
 */
public record Unknown(String path, String what) {}
