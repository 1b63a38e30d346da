package org.strawblue.core.heat;

import java.util.List;
import org.strawblue.core.estimate.Constants;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * Thermal properties of carbon steel on heating.
 *
 * <p>k = 54 − 0.0333 T to 800 °C, 27.3 above [W/(m·K)]; c by four pieces with the peak of the change at 735 °C [J/(kg·K)];
 * enthalpy by Simpson's rule on steps of 1 K. Range: −100 to 1300 °C. Stands for low-carbon steel: about 1 % C differs by some
 * 5 %. Source: EN 1993-1-2.
 */
public final class SteelProperties {

    static final Constants HEAT = Constants.of(SteelProperties.class, "heat.csv");

    /** [kg/m³] */
    public static final double DENSITY = HEAT.number("density");

    /** Stefan-Boltzmann constant [W/(m²·K⁴)] */
    public static final double STEFAN_BOLTZMANN = HEAT.number("stefan-boltzmann");

    private static final Unit CELSIUS = Units.of(Dimension.TEMPERATURE, "°C");
    private static final List<Piece> CONDUCTIVITY = pieces("conductivity");
    private static final List<Piece> SPECIFIC_HEAT = pieces("specific-heat");

    private SteelProperties() {}

    private record Piece(double from, double to, double[] c, double numerator, double pole) {
        double at(double celsius) {
            double polynomial = c[0] + celsius * (c[1] + celsius * (c[2] + celsius * c[3]));
            return polynomial + numerator / (pole - celsius);
        }
    }

    /** [W/(m·K)] at a temperature [K]. */
    public static double conductivity(double kelvin) {
        return at(CONDUCTIVITY, CELSIUS.fromSi(kelvin));
    }

    /** [J/(kg·K)] at a temperature [K]. */
    public static double specificHeat(double kelvin) {
        return at(SPECIFIC_HEAT, CELSIUS.fromSi(kelvin));
    }

    /** Heat [J/kg] to bring steel from one temperature [K] to a higher one. */
    public static double enthalpy(double from, double to) {
        int steps = (int) Math.ceil(to - from);
        double step = (to - from) / steps;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double left = from + i * step;
            sum += (specificHeat(left) + 4 * specificHeat(left + step / 2) + specificHeat(left + step)) * step / 6;
        }
        return sum;
    }

    /** Temperature of the workshop [K]. */
    public static double room() {
        return HEAT.si("room", Dimension.TEMPERATURE);
    }

    public static Basis basis() {
        return new Basis("heat in steel", "en-1993-1-2", Standing.PUBLISHED);
    }

    private static double at(List<Piece> pieces, double celsius) {
        int i = 0; // an index, since this is asked many thousand times for one card
        while (i < pieces.size() - 1 && celsius >= pieces.get(i).to) {
            i++;
        }
        return pieces.get(i).at(celsius);
    }

    private static List<Piece> pieces(String quantity) {
        return Table.of(SteelProperties.class, "steel-properties.csv").rows().stream()
                .filter(r -> r.text("quantity").equals(quantity))
                .map(SteelProperties::piece)
                .toList();
    }

    private static Piece piece(Row row) {
        double[] c = {row.number("c0"), row.number("c1"), row.number("c2"), row.number("c3")};
        return new Piece(row.number("from_C"), row.number("to_C"), c, row.number("numerator"), row.number("pole_C"));
    }
}
