package org.strawblue.app.proof;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;

/** The inputs of a check case: {@code grade=O1; temperature=204 C; time=1 h}. */
public record Inputs(Map<String, String> texts) {

    public Inputs {
        texts = Collections.unmodifiableMap(new LinkedHashMap<>(texts));
    }

    /** @throws IllegalArgumentException where the text is not of the form above */
    public static Inputs parse(String text) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (String pair : text.split(";")) {
            if (pair.isBlank()) {
                continue;
            }
            int equals = pair.indexOf('=');
            if (equals < 1) {
                throw new IllegalArgumentException("expected name=value, not '" + pair.trim() + "'");
            }
            texts.put(
                    pair.substring(0, equals).trim(), pair.substring(equals + 1).trim());
        }
        return new Inputs(texts);
    }

    public boolean has(String name) {
        return texts.containsKey(name);
    }

    public String text(String name) {
        return optionalText(name).orElseThrow(() -> new IllegalArgumentException("no input '" + name + "'"));
    }

    public Optional<String> optionalText(String name) {
        return Optional.ofNullable(texts.get(name));
    }

    /** The input in the core's unit of that dimension. */
    public double si(String name, Dimension dimension) {
        return read(name, text(name), dimension);
    }

    public OptionalDouble optionalSi(String name, Dimension dimension) {
        return has(name) ? OptionalDouble.of(si(name, dimension)) : OptionalDouble.empty();
    }

    /** [m] */
    public double length(String name) {
        return si(name, Dimension.LENGTH);
    }

    /** [K] */
    public double temperature(String name) {
        return si(name, Dimension.TEMPERATURE);
    }

    /** [s] */
    public double time(String name) {
        return si(name, Dimension.TIME);
    }

    /** A bare number. */
    public double number(String name) {
        return si(name, Dimension.NUMBER);
    }

    private static double read(String name, String text, Dimension dimension) {
        int end = numberEnd(text);
        String unitName = text.substring(end).trim();
        try {
            double value = Double.parseDouble(text.substring(0, end).trim());
            return unitName.isEmpty()
                    ? bare(value, dimension, name)
                    : unit(dimension, unitName, name).toSi(value);
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(name + ": expected a number and its unit, not '" + text + "'", e);
        }
    }

    private static int numberEnd(String text) {
        int i = 0;
        while (i < text.length() && ("+-.".indexOf(text.charAt(i)) >= 0 || Character.isDigit(text.charAt(i)))) {
            i++;
        }
        boolean exponent = i + 1 < text.length()
                && Character.toLowerCase(text.charAt(i)) == 'e'
                && ("+-".indexOf(text.charAt(i + 1)) >= 0 || Character.isDigit(text.charAt(i + 1)));
        return exponent ? i + 2 + numberEnd(text.substring(i + 2)) : i;
    }

    /** Only dimensions whose core unit needs no name may go without. */
    private static double bare(double value, Dimension dimension, String name) {
        if (dimension == Dimension.HARDNESS || dimension.si().equals("1")) {
            return value;
        }
        throw new IllegalArgumentException(name + ": the unit is missing");
    }

    private static Unit unit(Dimension dimension, String unitName, String name) {
        return Units.find(dimension, unitName)
                .orElseThrow(() -> new IllegalArgumentException(name + ": '" + unitName + "' is no unit of "
                        + dimension.name().toLowerCase(java.util.Locale.ROOT)));
    }
}
