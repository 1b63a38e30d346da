package org.strawblue.core.heat.course;

import java.util.SplittableRandom;
import org.strawblue.core.history.Trace;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.steel.Film;

/** Parts and settings at random, for property tests. */
public final class AnyCourse {

    public static final double COLDEST = 270;
    public static final double HOTTEST = 2500;

    private AnyCourse() {}

    public static PartShape shape(SplittableRandom random) {
        double section = Math.exp(random.nextDouble(Math.log(0.0013), Math.log(0.08)));
        double length = section * random.nextDouble(0.8, 15);
        return switch (random.nextInt(4)) {
            case 0 -> new PartShape.RoundBar(section, length);
            case 1 -> new PartShape.SquareBar(section, length);
            case 2 -> new PartShape.Flat(section, section * random.nextDouble(1, 10), length);
            default -> new PartShape.Tube(section, section * random.nextDouble(0.05, 0.95) * 0.5, length);
        };
    }

    public static Setting setting(SplittableRandom random) {
        double kelvin = random.nextDouble(COLDEST, 1400);
        double emissivity = random.nextDouble();
        double room = random.nextDouble(COLDEST, 310);
        return switch (random.nextInt(9)) {
            case 0 -> Setting.OnPlate.steady(kelvin, 200e-6 * random.nextDouble(0.005, 1), emissivity, 0.3, room);
            case 1 ->
                Setting.OnPlate.steady(kelvin, 20e-6, emissivity, 0.5, room).withCover();
            case 2 -> new Setting.InOven(kelvin + 30, random.nextDouble(25), 300, 0.3, 8, emissivity);
            case 3 -> new Setting.InLoggedOven(log(random), 20, emissivity);
            case 4 -> new Setting.AsLogged(log(random));
            case 5 -> new Setting.InFlame(random.nextDouble(1000, HOTTEST), 200, emissivity, room);
            case 6 ->
                new Setting.InBath(
                        new Film(new double[] {300, 600, 800, 1100}, new double[] {800, 9000, 9000, 1500}), 1, room);
            case 7 -> new Setting.InSand(kelvin, random.nextDouble(20, 300));
            default -> new Setting.InAir(room, emissivity, random.nextDouble(0.5, 2));
        };
    }

    private static Trace log(SplittableRandom random) {
        int n = 2 + random.nextInt(30);
        double[] seconds = new double[n];
        double[] kelvin = new double[n];
        for (int i = 0; i < n; i++) {
            seconds[i] = (i == 0 ? 0 : seconds[i - 1]) + (i == 0 ? 0 : random.nextDouble(0.1, 300));
            kelvin[i] = random.nextDouble(COLDEST, 1200);
        }
        return new Trace(seconds, kelvin);
    }
}
