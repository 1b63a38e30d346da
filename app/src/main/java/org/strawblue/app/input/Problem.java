package org.strawblue.app.input;

import java.util.Optional;

/**
 * One fault of the input.
 *
 * @param read the text that could not be understood
 * @param expected what should stand there
 * @param nearest the known word most like the one read
 * @param remedy what to do
 */
public record Problem(Place place, String read, String expected, Optional<String> nearest, String remedy) {}
